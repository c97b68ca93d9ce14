package yardclock.core.intake;

/** Why an answer to a clock exchange is not taken as one. */
public enum AnswerRefusal {
    /** Its question was answered already. */
    AGAIN,

    /** It took too long to say anything of the clock. */
    LATE,

    /** Nobody asked this unit a question with that id, or so long ago that it is forgotten. */
    UNKNOWN
}
