package setwright.window.view.route;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.window.desk.RouteActions;
import setwright.window.look.Palette;
import setwright.window.model.RouteCard;
import setwright.window.view.part.Keys;

/** The route: the set-ups as cards in working order. */
public final class RouteView extends JPanel {
    private static final long serialVersionUID = 1L;
    static final int HEIGHT = 84;

    private final transient RoutePictures pictures;
    private final transient RouteActions actions;
    private final transient List<RouteCardView> cards = new ArrayList<>();

    public RouteView(RoutePictures pictures, RouteActions actions) {
        super(new MigLayout("insets 6 8 6 8, gap 8 0", "", "[fill, grow]"));
        this.pictures = pictures;
        this.actions = actions;
        setName("route");
        getAccessibleContext().setAccessibleName("Route");
        Keys.within(this, "RIGHT", () -> goOn(1));
        Keys.within(this, "LEFT", () -> goOn(-1));
    }

    public void show(List<RouteCard> route) {
        setBackground(Palette.now().paper());
        List<String> shown = cards.stream().map(RouteCardView::setUp).toList();
        if (!shown.equals(route.stream().map(RouteCard::setUp).toList())) {
            build(route);
        }
        for (int i = 0; i < cards.size(); i++) {
            cards.get(i).show(route.get(i));
        }
    }

    /** The chosen card takes the keyboard. */
    public void takeKeyboard() {
        cards.stream().filter(RouteCardView::isSelected).findFirst().ifPresent(RouteCardView::requestFocusInWindow);
    }

    /** Lays the cards out anew; where one of them had the keyboard, the chosen one has it afterwards. */
    private void build(List<RouteCard> route) {
        boolean focused = cards.stream().anyMatch(RouteCardView::isFocusOwner);
        List<RouteCardView> before = new ArrayList<>(cards);
        removeAll();
        cards.clear();
        for (RouteCard card : route) {
            RouteCardView view = before.stream()
                    .filter(each -> each.setUp().equals(card.setUp()))
                    .findFirst()
                    .orElseGet(() -> new RouteCardView(card, pictures, actions));
            cards.add(view);
            add(view, "w 100:" + RouteCardView.WIDTH + ":" + RouteCardView.WIDTH + ", h " + RouteCardView.HEIGHT + "!");
            view.show(card);
        }
        revalidate();
        repaint();
        if (focused) {
            takeKeyboard();
        }
    }

    private void goOn(int by) {
        for (int i = 0; i < cards.size(); i++) {
            if (cards.get(i).isFocusOwner() && i + by >= 0 && i + by < cards.size()) {
                cards.get(i + by).requestFocusInWindow();
                actions.choose(cards.get(i + by).setUp());
                return;
            }
        }
    }
}
