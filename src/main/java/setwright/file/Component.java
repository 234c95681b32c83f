package setwright.file;

import java.util.List;
import setwright.file.shape.HalfRead;

/**
 * A component of a record, or of every record of a family.
 *
 * @param owner the record, or the interface of the family
 */
record Component(Class<?> owner, String key) {
    /** Some components of one record or family. */
    static List<Component> of(Class<?> owner, String... keys) {
        return List.of(keys).stream().map(key -> new Component(owner, key)).toList();
    }

    boolean in(HalfRead record) {
        return owner.isAssignableFrom(record.type());
    }

    /** Whether it is that key of that record. */
    boolean is(HalfRead record, String asked) {
        return key.equals(asked) && in(record);
    }
}
