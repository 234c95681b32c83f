package setwright.window.view.rank;

import java.awt.Font;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import setwright.window.desk.RankingActions;
import setwright.window.look.Palette;
import setwright.window.model.RankingPage;
import setwright.window.view.part.Keys;

/** The ranking over the card: a line for each, the reasons of the one that is chosen, and taking it. */
public final class RankingView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int ROW = 28;

    private final transient RankingActions actions;
    private final JTextArea title = wrapping("ranking.title");
    private final JLabel working = new JLabel();
    private final DefaultListModel<RankingPage.Item> model = new DefaultListModel<>();
    private final JList<RankingPage.Item> list = new JList<>(model);
    private final JTextArea reasons = wrapping("ranking.reasons");
    private final JTextField because = new JTextField();
    private final JButton take = new JButton("Take it");
    private final JButton close = new JButton("Back to the card");
    private transient List<RankingPage.Item> shown = List.of();
    private boolean open;

    public RankingView(RankingActions actions) {
        super(new MigLayout(
                "fill, insets 12, gap 6 8, wrap 1, hidemode 3",
                "[grow, fill]",
                "[][][grow 60, fill][grow 40, fill][28!]"));
        this.actions = actions;
        setName("ranking");
        list.setName("ranking.list");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setFixedCellHeight(ROW);
        list.setCellRenderer(new RankingLine());
        list.getAccessibleContext().setAccessibleName("Ranking, the best first");
        list.addListSelectionListener(event -> showReasons());
        reasons.getAccessibleContext().setAccessibleName("Reasons");
        reasons.setFocusable(true);
        working.setName("ranking.working");
        add(title, "wmin 0");
        add(working, "wmin 0");
        add(scrolled(list), "wmin 0, hmin 0");
        add(scrolled(reasons), "wmin 0, hmin 0");
        add(foot(), "wmin 0");
        Keys.on(list, "ENTER", this::take);
        Keys.within(this, "ESCAPE", actions::close);
    }

    private JPanel foot() {
        JPanel foot = new JPanel(new MigLayout("fillx, insets 0, gap 6", "[][grow, fill][][]", "[28!]"));
        foot.setOpaque(false);
        JLabel label = new JLabel("because");
        label.setLabelFor(because);
        because.setName("ranking.because");
        because.addActionListener(event -> take());
        take.setName("ranking.take");
        take.addActionListener(event -> take());
        close.setName("ranking.close");
        close.addActionListener(event -> actions.close());
        foot.add(label);
        foot.add(because, "h 28!, wmin 80");
        foot.add(take, "h 28!");
        foot.add(close, "h 28!");
        return foot;
    }

    private static JScrollPane scrolled(JComponent inside) {
        JScrollPane scroll = new JScrollPane(
                inside,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createLineBorder(Palette.now().rule()));
        return scroll;
    }

    private static JTextArea wrapping(String name) {
        JTextArea area = new JTextArea();
        area.setName(name);
        area.setEditable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setOpaque(false);
        area.setFocusable(false);
        return area;
    }

    private void take() {
        RankingPage.Item chosen = list.getSelectedValue();
        if (chosen != null && chosen.takes()) {
            actions.take(chosen.rank(), because.getText());
        }
    }

    private void showReasons() {
        RankingPage.@Nullable Item chosen = list.getSelectedValue();
        reasons.setText(
                chosen == null
                        ? ""
                        : chosen.reasons().stream().map(each -> "- " + each).collect(Collectors.joining("\n")));
        reasons.setCaretPosition(0);
        take.setEnabled(chosen != null && chosen.takes());
        because.setEnabled(chosen != null && chosen.takes() && chosen.rank() > 1);
    }

    public void takeKeyboard() {
        list.requestFocusInWindow();
    }

    /** Whether it came up or went away. */
    public boolean show(RankingPage page) {
        Palette palette = Palette.now();
        setBackground(palette.sheet());
        title.setText(page.title());
        title.setFont(getFont().deriveFont(Font.BOLD));
        title.setForeground(palette.ink());
        reasons.setForeground(palette.ink());
        working.setText(page.working());
        working.setForeground(palette.pencil());
        working.setVisible(!page.working().isEmpty());
        if (!shown.equals(page.items())) {
            fill(page.items());
        }
        setVisible(page.open());
        boolean other = page.open() != open;
        open = page.open();
        if (other) {
            because.setText("");
        }
        return other;
    }

    /** The place in the list stays where it was. */
    private void fill(List<RankingPage.Item> items) {
        int at = Math.max(0, list.getSelectedIndex());
        shown = items;
        model.clear();
        items.forEach(model::addElement);
        if (!items.isEmpty()) {
            list.setSelectedIndex(Math.min(at, items.size() - 1));
        }
        showReasons();
    }
}
