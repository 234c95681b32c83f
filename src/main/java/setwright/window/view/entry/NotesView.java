package setwright.window.view.entry;

import java.awt.Font;
import java.awt.Rectangle;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import setwright.window.look.Palette;
import setwright.window.model.EntryPage;
import setwright.window.view.part.ScrolledPanel;
import setwright.window.view.part.WrappingText;

/** The notes that the job has, each with its sentence below it; the last is always in sight. */
final class NotesView extends JScrollPane {
    private static final long serialVersionUID = 1L;

    private final JPanel sheet =
            new ScrolledPanel(new MigLayout("fillx, insets 0, gap 0 1, wrap 1", "[grow, fill]", ""));
    private List<EntryPage.Noted> shown = List.of();

    NotesView() {
        super(ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        setName("entry.notes");
        setBorder(BorderFactory.createEmptyBorder());
        setOpaque(false);
        getViewport().setOpaque(false);
        sheet.setOpaque(false);
        setViewportView(sheet);
        sheet.getAccessibleContext().setAccessibleName("Notes");
    }

    void show(List<EntryPage.Noted> notes) {
        if (notes.equals(shown)) {
            return;
        }
        shown = List.copyOf(notes);
        sheet.removeAll();
        for (EntryPage.Noted noted : notes) {
            WrappingText note = new WrappingText("entry.noted");
            note.setFont(note.getFont().deriveFont(Font.BOLD));
            note.setForeground(Palette.now().ink());
            note.write(noted.note());
            WrappingText sentence = new WrappingText("entry.said");
            sentence.setForeground(Palette.now().pencil());
            sentence.write(noted.sentence());
            sheet.add(note, "wmin 0");
            sheet.add(sentence, "wmin 0, gapbottom 6");
        }
        sheet.revalidate();
        sheet.repaint();
        SwingUtilities.invokeLater(() -> sheet.scrollRectToVisible(new Rectangle(0, sheet.getHeight() - 1, 1, 1)));
    }
}
