package setwright.window.view.rank;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JLabel;
import javax.swing.JList;
import org.jspecify.annotations.Nullable;
import setwright.window.look.Palette;
import setwright.window.model.RankingPage;

/** One line of the ranking; what is dropped stands back. */
final class RankingLine extends DefaultListCellRenderer {
    private static final long serialVersionUID = 1L;

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, @Nullable Object value, int index, boolean selected, boolean focused) {
        super.getListCellRendererComponent(list, value, index, selected, focused);
        RankingPage.Item item = (RankingPage.Item) value;
        Palette palette = Palette.now();
        setText(item == null ? "" : item.text());
        setToolTipText(getText());
        setForeground(item != null && item.dropped() ? palette.pencil() : palette.ink());
        setBackground(selected ? palette.chosen() : palette.paper());
        setBorder(BorderFactory.createEmptyBorder(0, 8, 0, 8));
        setHorizontalAlignment(JLabel.LEADING);
        return this;
    }
}
