package setwright.window.view.entry;

import java.awt.Dimension;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;

/** For who does not know the notes: a kind of feature is chosen, and what it needs is then asked, one blank at a time. */
final class KindsButton extends JButton {
    private static final long serialVersionUID = 1L;
    private static final int HEIGHT = 28;
    private static final Map<String, String> KINDS = kinds();

    KindsButton(Consumer<String> begins) {
        super("Ask me, by kind");
        setName("entry.kinds");
        JPopupMenu menu = new JPopupMenu("Kinds");
        KINDS.forEach((words, note) -> {
            JMenuItem item = new JMenuItem(words);
            item.setName("entry.kind." + note);
            item.addActionListener(event -> begins.accept(note));
            item.setPreferredSize(new Dimension(item.getPreferredSize().width, HEIGHT));
            menu.add(item);
        });
        addActionListener(event -> menu.show(this, 0, -menu.getPreferredSize().height));
    }

    /** How the note of each kind begins. */
    private static Map<String, String> kinds() {
        Map<String, String> kinds = new LinkedHashMap<>();
        kinds.put("Hole", "hole");
        kinds.put("Tapped hole, M6", "M6");
        kinds.put("Reamed hole", "ream");
        kinds.put("Counterbored hole", "counterbore");
        kinds.put("Slot", "slot");
        kinds.put("Pocket", "pocket");
        kinds.put("Step", "step");
        kinds.put("Face", "face");
        kinds.put("Chamfer", "chamfer");
        kinds.put("Keyseat", "keyseat");
        kinds.put("T-slot", "T-slot");
        kinds.put("Flats", "flats");
        kinds.put("Slit", "slit");
        return java.util.Collections.unmodifiableMap(kinds);
    }
}
