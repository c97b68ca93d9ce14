package yardclock.tidy;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Reads Java sources into the few facts the tidy rules ask about. Parses only; needs no classes.
 */
final class JavaReader extends TreePathScanner<Void, Void> {
    /** A declared type. */
    record TypeSeen(
            String file, long line, String name, boolean topLevelPublic, boolean documented) {}

    /**
     * A method or constructor with a body.
     *
     * @param lines from the signature's first line to the closing brace
     */
    record MethodSeen(
            String file,
            long line,
            String name,
            long lines,
            int parameters,
            boolean overrides,
            Tree.Kind owner) {
        boolean isConstructor() {
            return name.equals("<init>");
        }
    }

    final List<TypeSeen> types = new ArrayList<>();
    final List<MethodSeen> methods = new ArrayList<>();

    private final DocTrees trees;
    private CompilationUnitTree unit;
    private String file = "";

    private JavaReader(DocTrees trees) {
        this.trees = trees;
    }

    static JavaReader read(List<Repository.Source> sources) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        StandardJavaFileManager files =
                compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8);
        List<Path> paths = sources.stream().map(Repository.Source::path).toList();
        JavacTask task =
                (JavacTask)
                        compiler.getTask(
                                null,
                                files,
                                null,
                                List.of(),
                                null,
                                files.getJavaFileObjectsFromPaths(paths));
        JavaReader reader = new JavaReader(DocTrees.instance(task));
        try {
            for (CompilationUnitTree unit : task.parse()) {
                reader.unit = unit;
                reader.file = nameOf(unit, sources);
                reader.scan(unit, null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return reader;
    }

    @Override
    public Void visitClass(ClassTree type, Void nothing) {
        boolean topLevel = getCurrentPath().getParentPath().getLeaf() == unit;
        types.add(
                new TypeSeen(
                        file,
                        lineOf(type),
                        type.getSimpleName().toString(),
                        topLevel && type.getModifiers().getFlags().contains(Modifier.PUBLIC),
                        trees.getDocComment(getCurrentPath()) != null));
        return super.visitClass(type, nothing);
    }

    @Override
    public Void visitMethod(MethodTree method, Void nothing) {
        if (getCurrentPath().getParentPath().getLeaf() instanceof ClassTree owner) {
            long end = trees.getSourcePositions().getEndPosition(unit, method);
            long first = lineOf(method);
            methods.add(
                    new MethodSeen(
                            file,
                            first,
                            method.getName().toString(),
                            unit.getLineMap().getLineNumber(end) - first + 1,
                            method.getParameters().size(),
                            method.getModifiers().getAnnotations().stream()
                                    .anyMatch(it -> it.toString().contains("Override")),
                            owner.getKind()));
        }
        return super.visitMethod(method, nothing);
    }

    private long lineOf(Tree tree) {
        return unit.getLineMap()
                .getLineNumber(trees.getSourcePositions().getStartPosition(unit, tree));
    }

    private static String nameOf(CompilationUnitTree unit, List<Repository.Source> sources) {
        Path path = Path.of(unit.getSourceFile().toUri());
        return sources.stream()
                .filter(source -> source.path().equals(path))
                .map(Repository.Source::name)
                .findFirst()
                .orElseThrow();
    }
}
