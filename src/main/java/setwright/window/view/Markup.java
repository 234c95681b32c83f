package setwright.window.view;

/** Text put into the small HTML that labels and buttons wrap their lines with. */
final class Markup {
    private Markup() {}

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
