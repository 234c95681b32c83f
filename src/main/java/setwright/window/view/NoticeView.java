package setwright.window.view;

import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import setwright.window.look.Palette;
import setwright.window.state.Notice;

/** What has to be read before it goes on, over the card: every problem of a file with its place. */
final class NoticeView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int WRAP = 460;

    private final JLabel title = new JLabel();
    private final DefaultListModel<String> lines = new DefaultListModel<>();
    private final JList<String> list = new JList<>(lines);
    private final JButton close = new JButton("Back to the job");
    private boolean shown;

    NoticeView(Runnable back) {
        super(new MigLayout("fill, insets 12, gap 0 8, wrap 1", "[grow, fill]", "[][grow, fill][28!]"));
        setName("notice");
        list.setName("notice.lines");
        list.getAccessibleContext().setAccessibleName("Problems");
        close.setName("notice.close");
        close.addActionListener(event -> back.run());
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), "back");
        getActionMap().put("back", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                back.run();
            }
        });
        add(title, "wmin 0");
        add(scroll, "wmin 0");
        add(close, "growx 0, h 28!");
    }

    void show(Notice notice) {
        Palette palette = Palette.now();
        setBackground(palette.sheet());
        list.setBackground(palette.sheet());
        boolean open = !notice.title().isEmpty();
        title.setText(
                "<html><body style='width:" + WRAP + "px'><b>" + Markup.escaped(notice.title()) + "</b></body></html>");
        List<String> wrapped = new ArrayList<>();
        for (String line : notice.lines()) {
            wrapped.add("<html><body style='width:" + WRAP + "px; padding:4px 0'>" + Markup.escaped(line)
                    + "</body></html>");
        }
        if (!wrapped.equals(java.util.Collections.list(lines.elements()))) {
            lines.clear();
            lines.addAll(wrapped);
        }
        setVisible(open);
        if (open && !shown) {
            close.requestFocusInWindow();
        }
        shown = open;
    }
}
