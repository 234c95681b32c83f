package setwright.window.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import setwright.window.look.Palette;
import setwright.window.model.RouteCard;

/** The route: the set-ups as cards in working order. */
final class RouteView extends JPanel {
    private static final long serialVersionUID = 1L;
    static final int HEIGHT = 84;

    private final transient RouteCardView.Picture picture;
    private final transient Consumer<String> choose;
    private final transient List<RouteCardView> cards = new ArrayList<>();

    RouteView(RouteCardView.Picture picture, Consumer<String> choose) {
        super(new MigLayout("insets 6 8 6 8, gap 8 0", "", "[fill, grow]"));
        this.picture = picture;
        this.choose = choose;
        setName("route");
        getAccessibleContext().setAccessibleName("Route");
    }

    void show(List<RouteCard> route) {
        setBackground(Palette.now().paper());
        boolean same = route.size() == cards.size();
        for (int i = 0; same && i < route.size(); i++) {
            same = cards.get(i).getName().equals("route." + route.get(i).setUp());
        }
        if (!same) {
            removeAll();
            cards.clear();
            route.forEach(card -> {
                RouteCardView view = new RouteCardView(card, picture, choose);
                cards.add(view);
                add(
                        view,
                        "w 150:" + RouteCardView.WIDTH + ":" + RouteCardView.WIDTH + ", h " + RouteCardView.HEIGHT
                                + "!");
            });
            revalidate();
        }
        for (int i = 0; i < cards.size(); i++) {
            cards.get(i).show(route.get(i));
        }
    }
}
