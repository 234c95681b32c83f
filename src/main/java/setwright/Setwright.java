package setwright;

/** Where the program starts. */
public final class Setwright {
    private Setwright() {}

    public static void main(String[] arguments) {
        System.out.println("Setwright: plans set-ups for the milling shop.");
        System.exit(0);
    }
}
