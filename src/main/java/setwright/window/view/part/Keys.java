package setwright.window.view.part;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Ties what a key does to the place where it does it. */
public final class Keys {
    private Keys() {}

    /** While the component itself has the keyboard. */
    public static void on(JComponent component, String key, Runnable does) {
        bind(component, JComponent.WHEN_FOCUSED, KeyStroke.getKeyStroke(key), does);
    }

    /** While anything within the component has the keyboard. */
    public static void within(JComponent component, String key, Runnable does) {
        within(component, KeyStroke.getKeyStroke(key), does);
    }

    public static void within(JComponent component, KeyStroke key, Runnable does) {
        bind(component, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, key, does);
    }

    /** From anywhere in the window, where nothing nearer takes the key. */
    public static void anywhere(JComponent component, String key, Runnable does) {
        bind(component, JComponent.WHEN_IN_FOCUSED_WINDOW, KeyStroke.getKeyStroke(key), does);
    }

    public static Action action(String text, Runnable does) {
        return new AbstractAction(text) {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        };
    }

    private static void bind(JComponent component, int when, KeyStroke key, Runnable does) {
        String name = when + " " + key;
        component.getInputMap(when).put(key, name);
        component.getActionMap().put(name, action(name, does));
    }
}
