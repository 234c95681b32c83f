package setwright.window.view.notice;

import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import setwright.window.look.Palette;
import setwright.window.state.Notice;

/** What has to be read before it goes on, over the card: every problem of a file with its place. */
public final class NoticeView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JTextArea title = wrapping("notice.title");
    private final JTextArea lines = wrapping("notice.lines");
    private final JButton close = new JButton("Back to the job");
    private boolean shown;

    public NoticeView(Runnable back) {
        super(new MigLayout("fill, insets 12, gap 0 8, wrap 1", "[grow, fill]", "[][grow, fill][28!]"));
        setName("notice");
        lines.getAccessibleContext().setAccessibleName("Problems");
        close.setName("notice.close");
        close.addActionListener(event -> back.run());
        JScrollPane scroll = new JScrollPane(
                lines,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getViewport().setOpaque(false);
        scroll.setOpaque(false);
        add(title, "wmin 0");
        add(scroll, "wmin 0, hmin 0");
        add(close, "growx 0, h 28!");
    }

    private static JTextArea wrapping(String name) {
        JTextArea area = new JTextArea();
        area.setName(name);
        area.setEditable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setOpaque(false);
        return area;
    }

    public void takeKeyboard() {
        close.requestFocusInWindow();
    }

    /** Whether it came up or went away. */
    public boolean show(Notice notice) {
        Palette palette = Palette.now();
        setBackground(palette.sheet());
        boolean open = !notice.title().isEmpty();
        title.setText(notice.title());
        title.setFont(getFont().deriveFont(Font.BOLD));
        title.setForeground(palette.ink());
        lines.setForeground(palette.ink());
        String text = String.join("\n\n", notice.lines());
        if (!lines.getText().equals(text)) {
            lines.setText(text);
            lines.setCaretPosition(0);
        }
        setVisible(open);
        boolean other = open != shown;
        shown = open;
        return other;
    }
}
