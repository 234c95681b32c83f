package setwright.window.desk;

import java.util.List;
import setwright.window.model.Addable;

/** What a person does with the operations of a card as a whole. */
public interface OperationActions {
    /** What could be added behind the line; empty where nothing on this side waits for a cutter. */
    List<Addable> addable(String line);

    /** Adds an operation behind the line, and unfolds it. */
    void add(String line, Addable what);

    /** The same once more behind it, unfolded. */
    void duplicate(String line);

    void delete(String line);

    /** So many places later, or earlier, within its set-up. */
    void move(String line, int by);
}
