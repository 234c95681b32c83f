package setwright.window.view.part;

import java.awt.Color;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import setwright.window.look.Palette;

/** A line of text that is told on with every letter; Enter takes it. */
public final class PlainField extends JTextField {
    private static final long serialVersionUID = 1L;

    private final transient Consumer<String> typed;
    private boolean showing;
    private boolean telling;

    public PlainField(String name, Consumer<String> typed, Runnable enter) {
        this.typed = typed;
        setName(name);
        setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, Palette.now().ink()));
        addActionListener(event -> enter.run());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                selectAll();
            }
        });
        getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                changed();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                changed();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                // Attributes only; the text is the same.
            }

            private void changed() {
                if (!showing) {
                    tell();
                }
            }
        });
    }

    /** What is typed over a selection is one change. */
    @Override
    public void replaceSelection(String content) {
        showing = true;
        super.replaceSelection(content);
        showing = false;
        tell();
    }

    private void tell() {
        telling = true;
        typed.accept(getText());
        telling = false;
    }

    /** While it tells what was typed, nothing is written over it. */
    public void write(String text) {
        if (!telling && !getText().equals(text)) {
            showing = true;
            setText(text);
            showing = false;
            if (isFocusOwner()) {
                selectAll();
            }
        }
    }

    @Override
    public Color getBackground() {
        return Palette.now().paper();
    }
}
