package setwright.window.view.review;

import java.awt.Font;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.ReviewActions;
import setwright.window.look.Palette;
import setwright.window.model.Review;
import setwright.window.view.part.ScrolledPanel;

/** Review: one scroll, in the order of doubt. */
public final class ReviewView extends JScrollPane {
    private static final long serialVersionUID = 1L;
    private static final int WIDEST = 1100;

    private final JPanel page = new ScrolledPanel(
            new MigLayout("insets 12 24 24 24, gap 0, wrap 1", "[grow, fill, 0:" + WIDEST + ":" + WIDEST + "]", ""));
    private final transient ReviewActions actions;
    private final JTextField by = new JTextField(16);
    private final JButton sign = new JButton();
    private transient Review shown = Review.EMPTY;

    public ReviewView(ReviewActions actions) {
        super(ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        this.actions = actions;
        setName("review");
        setBorder(null);
        setViewportView(page);
        getVerticalScrollBar().setUnitIncrement(30);
        page.getAccessibleContext().setAccessibleName("Review");
        by.setName("sign.by");
        sign.setName("sign");
        sign.addActionListener(event -> actions.sign(by.getText()));
        by.addActionListener(event -> actions.sign(by.getText()));
    }

    public void takeKeyboard() {
        getVerticalScrollBar().setValue(0);
        for (java.awt.Component part : page.getComponents()) {
            if (part instanceof ReviewRow) {
                part.requestFocusInWindow();
                return;
            }
        }
    }

    private JPanel signing(String text) {
        JPanel row = new JPanel(new MigLayout("insets 8 4 8 4, gap 8", "", "[28!]"));
        row.setOpaque(false);
        JLabel label = new JLabel("Name");
        label.setLabelFor(by);
        sign.setText(text);
        row.add(label);
        row.add(by, "h 28!");
        row.add(sign, "h 28!");
        return row;
    }

    public void show(Review review, String person) {
        page.setBackground(Palette.now().sheet());
        getViewport().setBackground(Palette.now().sheet());
        if (review.equals(shown)) {
            return;
        }
        shown = review;
        page.removeAll();
        for (Review.Section section : review.sections()) {
            JLabel heading = new JLabel(section.heading());
            heading.setFont(heading.getFont().deriveFont(Font.BOLD, 15f));
            page.add(heading, "gaptop 14, gapbottom 2");
            section.items()
                    .forEach(item -> page.add(
                            new ReviewRow(item, () -> actions.place(item.setUp(), item.operation())), "wmin 0"));
        }
        if (!review.sign().isEmpty()) {
            page.add(signing(review.sign()), "wmin 0");
        }
        if (by.getText().isEmpty()) {
            by.setText(person);
        }
        page.revalidate();
        page.repaint();
    }
}
