package setwright.window.view.figure;

import java.awt.Color;
import javax.swing.BorderFactory;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import setwright.window.desk.BenchActions;
import setwright.window.look.Palette;

/** What is looked for; Enter takes the best that was found. */
final class SearchField extends JTextField {
    private static final long serialVersionUID = 1L;

    private boolean writing;

    SearchField(BenchActions actions) {
        setName("figures.search");
        getAccessibleContext().setAccessibleName("Bench figure");
        setBorder(BorderFactory.createMatteBorder(0, 0, 1, 0, Palette.now().ink()));
        addActionListener(event -> actions.choose(""));
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
                if (!writing) {
                    writing = true;
                    actions.search(getText());
                    writing = false;
                }
            }
        });
    }

    /** While it tells what was typed, nothing is written over it. */
    void write(String text) {
        if (!writing && !getText().equals(text)) {
            writing = true;
            setText(text);
            writing = false;
        }
    }

    @Override
    public Color getBackground() {
        return Palette.now().paper();
    }
}
