package setwright.job.note;

/**
 * What a note lacks, asked as one blank.
 *
 * @param asks for instance {@code Where is its middle?}
 * @param likely what the blank holds at first; empty where nothing is likely
 * @param note the text so far
 * @param at where in the text the answer goes
 * @param joint what joins the answer to what stands before it
 */
public record Question(String asks, String likely, String note, int at, String joint) {
    /** The note with an answer put in. */
    public String with(String answer) {
        return note.substring(0, at) + joint + answer.strip() + note.substring(at);
    }
}
