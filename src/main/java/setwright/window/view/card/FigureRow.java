package setwright.window.view.card;

import java.awt.Font;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import setwright.quantity.Working;
import setwright.window.desk.CardActions;
import setwright.window.look.Palette;
import setwright.window.model.Figure;
import setwright.window.view.part.Markup;

/** A worked figure on one row; opened, its working stands below it as a handbook prints it. */
final class FigureRow extends JPanel {
    private static final long serialVersionUID = 1L;

    private final FigureHead head;
    private static final int LEAST = 40;
    private static final int INDENT = 24;

    private final JTextArea working = new JTextArea();
    private transient List<Working.Line> lines = List.of();

    FigureRow(Figure figure, CardActions actions) {
        super(new MigLayout("fillx, insets 0, gap 0, wrap 1, hidemode 3", "[grow, fill]", ""));
        setOpaque(false);
        head = new FigureHead(figure, actions);
        add(head, "h 28!, wmin 0");
        working.setName("working." + figure.key());
        working.setEditable(false);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                write();
            }
        });
        working.setOpaque(false);
        add(working, "wmin 0, gapleft 14, gapbottom 6");
    }

    void show(Figure figure) {
        head.show(figure);
        lines = figure.working();
        working.setVisible(!lines.isEmpty());
        working.setFont(new Font(Font.MONOSPACED, Font.PLAIN, head.getFont().getSize()));
        write();
        working.setForeground(Palette.now().ink());
        working.getAccessibleContext().setAccessibleName("Working of " + figure.name());
        working.getAccessibleContext()
                .setAccessibleDescription(
                        figure.working().stream().map(Working.Line::text).collect(Collectors.joining(". ")));
    }

    /** Breaks lines at the width that there is, the rest of a line a little further in. */
    private void write() {
        int columns = Math.max(
                LEAST,
                (getWidth() - INDENT)
                        / working.getFontMetrics(working.getFont()).charWidth('m'));
        String text = new Working(lines)
                .text()
                .lines()
                .map(line -> Markup.broken(line, columns))
                .collect(Collectors.joining("\n"));
        if (!working.getText().equals(text)) {
            working.setText(text);
            working.setCaretPosition(0);
        }
    }
}
