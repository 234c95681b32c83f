package setwright.window.view.part;

import javax.swing.BorderFactory;
import javax.swing.JTextArea;

/** Text that is read only, and wraps at the width that there is. */
public final class WrappingText extends JTextArea {
    private static final long serialVersionUID = 1L;

    public WrappingText(String name) {
        setName(name);
        setEditable(false);
        setFocusable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder());
    }

    /** Shows a text; an empty one takes no room where the layout lets go of hidden things. */
    public void write(String text) {
        setVisible(!text.isEmpty());
        if (!getText().equals(text)) {
            setText(text);
        }
    }
}
