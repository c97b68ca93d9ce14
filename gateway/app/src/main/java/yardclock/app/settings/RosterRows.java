package yardclock.app.settings;

import yardclock.core.course.RosterLine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Judges a roster's rows one by one. For one reading and one thread. */
final class RosterRows {
    private static final List<String> HEADER = List.of("number", "name", "group");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,9}");

    private final Findings findings;
    private final List<RosterLine> lines = new ArrayList<>();
    private final Map<Integer, String> names = new HashMap<>();
    private final Map<Integer, Integer> lineOfNumber = new HashMap<>();
    private boolean hasHeader;
    private int rows;

    RosterRows(Findings findings) {
        this.findings = findings;
    }

    void add(int line, List<String> fields) {
        if (fields.stream().allMatch(String::isEmpty)) {
            return;
        }
        if (!hasHeader) {
            hasHeader = true;
            checkHeader(line, fields);
            return;
        }
        rows++;
        if (rows == PlanLimits.ROSTER_LINES.max() + 1) {
            String wrong = "more candidates than a day can hold";
            findings.add(line, "", wrong, Block.allowed(PlanLimits.ROSTER_LINES));
        }
        if (rows <= PlanLimits.ROSTER_LINES.max()) {
            candidate(line, fields);
        }
    }

    private void checkHeader(int line, List<String> fields) {
        if (!fields.equals(HEADER)) {
            boolean isSemicolons = fields.size() == 1 && fields.get(0).contains(";");
            String hint = isSemicolons ? " (the fields are parted by semicolons)" : "";
            String wrong = "the first line is not the header" + hint;
            findings.add(line, "", wrong, "number,name,group");
        }
    }

    private void candidate(int line, List<String> fields) {
        if (fields.size() != HEADER.size()) {
            String wrong = "this line has " + fields.size() + " fields";
            findings.add(
                    line, "", wrong, "3: number, name and group; a comma in a name needs \"…\"");
            return;
        }
        int number = number(line, "number", fields.get(0), PlanLimits.CANDIDATE_NUMBER);
        int group = number(line, "group", fields.get(2), PlanLimits.GROUP);
        checkName(line, fields.get(1));
        if (number > 0) {
            checkOnce(line, number);
            lines.add(new RosterLine(number, group));
            names.put(number, fields.get(1));
        }
    }

    private int number(int line, String key, String text, PlanLimits limit) {
        if (!NUMBER.matcher(text).matches() || !limit.admits(Long.parseLong(text))) {
            String wrong = text.isEmpty() ? "this is empty" : "this is not a number in range";
            findings.add(line, key, wrong, Block.allowed(limit));
            return (int) Block.WRONG;
        }
        return Integer.parseInt(text);
    }

    /** Problems never repeat the name itself: they may end in a log. */
    private void checkName(int line, String name) {
        long length = name.codePoints().count();
        if (!PlanLimits.CANDIDATE_NAME.admits(length)) {
            String wrong = length == 0 ? "this is empty" : "this has " + length + " characters";
            findings.add(line, "name", wrong, PlanLimits.CANDIDATE_NAME.allowed());
        } else if (name.codePoints().anyMatch(Character::isISOControl)) {
            findings.add(line, "name", "this has a line break or control character", "one line");
        }
    }

    private void checkOnce(int line, int number) {
        Integer before = lineOfNumber.putIfAbsent(number, line);
        if (before != null) {
            String wrong = "number " + number + " stands on line " + before + " already";
            findings.add(line, "number", wrong, "each number once");
        }
    }

    /** Says what only the whole file can show. */
    void end() {
        if (!hasHeader) {
            findings.add(0, "", "the file is empty", "number,name,group and a line a candidate");
        } else if (rows == 0) {
            findings.add(0, "", "there is no candidate in it", PlanLimits.ROSTER_LINES.allowed());
        }
    }

    Roster roster() {
        return new Roster(lines, names);
    }
}
