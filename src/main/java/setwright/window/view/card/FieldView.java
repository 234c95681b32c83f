package setwright.window.view.card;

import java.util.Locale;
import javax.swing.JComponent;
import setwright.job.Standing;
import setwright.window.model.Field;

/** A field on the screen. */
interface FieldView {
    void show(Field field);

    /** Says in words what the marks show. */
    static void describe(JComponent component, Field field) {
        component.getAccessibleContext().setAccessibleName(field.label());
        String standing = field.standing().name().toLowerCase(Locale.ROOT);
        component.getAccessibleContext().setAccessibleDescription(standing + said(field));
        component.setToolTipText(field.label() + ": " + standing + said(field) + ". " + keys(field.standing()));
    }

    private static String said(Field field) {
        return field.said().isEmpty() ? "" : ", " + field.said();
    }

    private static String keys(Standing standing) {
        return switch (standing) {
            case PENCILLED -> "Enter inks it.";
            case INKED, MEASURED -> "Delete gives it back to the pencil.";
        };
    }
}
