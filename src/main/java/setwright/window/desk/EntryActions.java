package setwright.window.desk;

/** What a person does while entering drawing notes. */
public interface EntryActions extends FieldActions {
    /** Opens the notes of the open job. */
    void open();

    /** Begins a new untitled job on the machine, of the material and in the units of the open one. */
    void begin();

    /** Closes the page; what is typed and not taken is dropped. */
    void close();

    /** A text stands in the note's line. */
    void note(String text);

    /** A text stands in the blank that is asked. */
    void answer(String text);

    /** Takes the note, or the answer in the blank, or what is likely there; on an empty line closes the page. */
    void take();

    /** Picks one of the readings that are offered, by its number from 1. */
    void pick(int number);

    /** Rubs out the answers, then the note; where nothing is typed, closes the page. */
    void back();
}
