package yardclock.core.engine;

/** Every kind of input, with the word that stands for it in the journal. */
public enum InputKind {
    EPOCH("epoch"),
    WALL_STEPPED("wall-stepped"),
    PLAN("plan"),
    ROSTER("roster"),
    EDGE("edge"),
    HEALTH("health"),
    UNIT_DOWN("unit-down"),
    EXCHANGE("exchange"),
    ANSWER_REFUSED("answer-refused"),
    TABLET_EXCHANGE("tablet-exchange"),
    CLIMATE("climate"),
    CODE("code"),
    ENROLMENT("enrolment"),
    RULING("ruling"),
    SETTINGS_APPLIED("settings-applied"),
    DEADLINE("deadline");

    private final String word;

    InputKind(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static InputKind of(String word) {
        for (InputKind kind : values()) {
            if (kind.word.equals(word)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no input kind is called " + word);
    }
}
