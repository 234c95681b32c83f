package setwright.window.view.card;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.KeyStroke;
import setwright.job.Standing;
import setwright.window.desk.FieldActions;
import setwright.window.look.Palette;
import setwright.window.look.Written;
import setwright.window.model.Choice;
import setwright.window.model.Field;
import setwright.window.view.part.StandingMark;

/** A value that is chosen from what the shop owns. Enter inks it, Delete gives it back to the pencil. */
final class ChoiceField extends JComboBox<Choice> implements FieldView {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 28;

    private final transient FieldActions actions;
    private final String key;
    private final transient TypeToFind find = new TypeToFind();
    private List<Choice> choices = List.of();
    private Standing standing = Standing.PENCILLED;
    private boolean showing;

    ChoiceField(Field field, FieldActions actions) {
        this.actions = actions;
        this.key = field.key();
        setName("field." + key);
        setRenderer(new Cell());
        setMaximumRowCount(14);
        setKeySelectionManager((letter, model) -> -1);
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent event) {
                find(event);
            }
        });
        setMinimumSize(new java.awt.Dimension(60, HEIGHT));
        setPreferredSize(new java.awt.Dimension(60, HEIGHT));
        addActionListener(event -> chosen());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                find.begin();
            }

            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) {
                    actions.left(key);
                }
            }
        });
        bind(KeyEvent.VK_DELETE, "pencil", () -> actions.pencil(key));
        bind(KeyEvent.VK_ENTER, "ink", this::enter);
        bind(KeyEvent.VK_ESCAPE, "back", this::escape);
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke(KeyEvent.VK_F4, 0), "left to the next caution");
        show(field);
    }

    private void bind(int code, String name, Runnable action) {
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(code, 0), name);
        getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    /** What is typed finds a choice; what stands for an order to the window does not. */
    private void find(KeyEvent event) {
        int found = event.isControlDown() || event.isAltDown() ? -1 : find.index(event.getKeyChar(), choices);
        if (found >= 0) {
            setSelectedIndex(found);
            event.consume();
        }
    }

    private void enter() {
        setPopupVisible(false);
        actions.ink(key);
    }

    private void escape() {
        if (isPopupVisible()) {
            setPopupVisible(false);
        } else {
            actions.back(key);
        }
    }

    private void chosen() {
        if (!showing && getSelectedItem() instanceof Choice choice) {
            actions.typed(key, choice.value());
        }
    }

    @Override
    public void show(Field field) {
        standing = field.standing();
        showing = true;
        if (!choices.equals(field.choices())) {
            choices = field.choices();
            setModel(new DefaultComboBoxModel<>(choices.toArray(Choice[]::new)));
        }
        setSelectedItem(field.chosen().orElse(null));
        showing = false;
        FieldView.describe(this, field);
        repaint();
    }

    @Override
    public void paint(Graphics graphics) {
        super.paint(graphics);
        Graphics2D g = Written.sharp(graphics);
        String text = getSelectedItem() instanceof Choice choice ? choice.text() : "";
        int room = getWidth() - 34;
        StandingMark.paint(
                g, standing, this, Math.min(room, getFontMetrics(getFont()).stringWidth(text)));
        g.dispose();
    }

    private static final class Cell extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(list, value, index, selected, focused);
            if (value instanceof Choice choice && index >= 0) {
                boolean open = choice.against().isEmpty();
                setText(open ? choice.text() : choice.text() + " - " + choice.against());
                if (!open && !selected) {
                    setForeground(Palette.now().pencil());
                }
            }
            setBorder(javax.swing.BorderFactory.createEmptyBorder(index < 0 ? 0 : 5, 3, index < 0 ? 0 : 5, 3));
            return this;
        }
    }
}
