package setwright.window.model;

/**
 * One step of the walk through, on a page.
 *
 * @param number of the step, from 1; 0 where there is none
 * @param of how many there are
 * @param text at most 30 words
 * @param act what to do; may be empty
 * @param check what to look at; may be empty
 * @param bitesHere caution or thinnest margin of this step; may be empty
 * @param holds whether it wants a reading or a name
 * @param done who did it, and when; empty where nobody did
 */
public record Walk(
        int number,
        int of,
        String setUp,
        String operation,
        String text,
        String act,
        String check,
        String bitesHere,
        boolean holds,
        String done) {
    public static final Walk EMPTY = new Walk(0, 0, "", "", "", "", "", "", false, "");
}
