package yardclock.app.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** One value as it was written, and the forms it can be taken for. */
record Value(Block block, String key, String text) {
    static final String YES_NO = "yes, no";
    static final String STATES = "closed, blocked or pressed; open, clear or released";
    static final String ID_FORM = "1 to 24 of a-z, 0-9 and hyphen";

    private static final Pattern ID = Pattern.compile("[a-z0-9-]{1,24}");
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,12}");

    static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    /** The words of an enum as they are written in a plan. */
    static String words(Class<? extends Enum<?>> words) {
        return Arrays.stream(words.getEnumConstants())
                .map(Value::word)
                .collect(Collectors.joining(", "));
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    long number(PlanLimits limit) {
        if (!NUMBER.matcher(text).matches()) {
            return refused("is not a whole number", limit);
        }
        return inRange(Long.parseLong(text), limit);
    }

    long time(PlanLimits limit) {
        OptionalLong micros = Durations.parse(text);
        if (micros.isEmpty()) {
            block.wrong(key, said("is not a time"), limit.allowed() + "; " + Durations.FORMS);
            return Block.WRONG;
        }
        return inRange(micros.getAsLong(), limit);
    }

    private long inRange(long number, PlanLimits limit) {
        return limit.admits(number) ? number : refused("is out of range", limit);
    }

    private long refused(String wrong, PlanLimits limit) {
        block.wrong(key, said(wrong), Block.allowed(limit));
        return Block.WRONG;
    }

    boolean yesNo() {
        if (!text.equals("yes") && !text.equals("no")) {
            block.wrong(key, said("is neither yes nor no"), YES_NO);
        }
        return text.equals("yes");
    }

    <E extends Enum<E>> Optional<E> word(Class<E> words) {
        for (E value : words.getEnumConstants()) {
            if (word(value).equals(text)) {
                return Optional.of(value);
            }
        }
        block.wrong(key, said("is not one of the words"), words(words));
        return Optional.empty();
    }

    <E extends Enum<E>> List<E> wordsOf(Class<E> words) {
        List<E> found = new ArrayList<>();
        for (String one : text.split(",", -1)) {
            Optional<E> word = new Value(block, key, one.strip()).word(words);
            if (word.isPresent() && found.contains(word.get())) {
                block.wrong(key, said("says a word twice"), "each word once");
            }
            word.ifPresent(found::add);
        }
        return found;
    }

    String id() {
        if (isId(text)) {
            return text;
        }
        return blame("is no id", ID_FORM);
    }

    String sentence(PlanLimits limit) {
        long length = text.codePoints().count();
        if (!limit.admits(length)) {
            return blame("has " + length + " characters", limit.allowed());
        }
        boolean isPlain = text.codePoints().noneMatch(Character::isISOControl);
        return isPlain ? text : blame("has a line break or control character", "one line of text");
    }

    private String blame(String wrong, String allowed) {
        block.wrong(key, said(wrong), allowed);
        return "";
    }

    int state() {
        switch (text) {
            case "closed":
            case "blocked":
            case "pressed":
                return 1;
            case "open":
            case "clear":
            case "released":
                return 0;
            default:
                block.wrong(key, said("is no state of a sensor"), STATES);
                return (int) Block.WRONG;
        }
    }

    /** The value and what is wrong with it; long values are cut, they stand in the file anyway. */
    private String said(String wrong) {
        String shown = text.length() > 40 ? text.substring(0, 40) + "…" : text;
        return "\"" + shown + "\" " + wrong;
    }
}
