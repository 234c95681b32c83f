package setwright.window.view.card;

import java.util.function.Consumer;
import setwright.window.desk.FieldActions;

/** The same actions; Enter also goes on to the next field, which is told the key of the one that it came from. */
public record Onward(FieldActions actions, Consumer<String> next) implements FieldActions {
    @Override
    public void typed(String field, String text) {
        actions.typed(field, text);
    }

    @Override
    public void ink(String field) {
        actions.ink(field);
        next.accept(field);
    }

    @Override
    public void pencil(String field) {
        actions.pencil(field);
    }

    @Override
    public void back(String field) {
        actions.back(field);
    }

    @Override
    public void left(String field) {
        actions.left(field);
    }
}
