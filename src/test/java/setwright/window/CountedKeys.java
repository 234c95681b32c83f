package setwright.window;

import java.awt.AWTException;
import java.awt.Robot;
import java.awt.event.KeyEvent;
import java.util.Map;

/** A keyboard that counts: every key one, a chord one, Enter one. */
final class CountedKeys {
    private static final Map<Character, Integer> PLAIN =
            Map.of(' ', KeyEvent.VK_SPACE, '.', KeyEvent.VK_PERIOD, '/', KeyEvent.VK_SLASH, '-', KeyEvent.VK_MINUS);

    private final Robot robot;
    private int count;

    CountedKeys() throws AWTException {
        robot = new Robot();
        robot.setAutoWaitForIdle(true);
    }

    int count() {
        return count;
    }

    /** Counts from nought again, and says how many there were. */
    int counted() {
        int before = count;
        count = 0;
        return before;
    }

    CountedKeys type(String text) {
        for (char letter : text.toCharArray()) {
            if (Character.isUpperCase(letter)) {
                chord(letter, KeyEvent.VK_SHIFT);
            } else {
                key(PLAIN.getOrDefault(letter, KeyEvent.getExtendedKeyCodeForChar(letter)));
            }
        }
        return this;
    }

    CountedKeys enter() {
        return key(KeyEvent.VK_ENTER);
    }

    CountedKeys key(int code) {
        return chord(code);
    }

    CountedKeys chord(int code, int... held) {
        count++;
        for (int key : held) {
            robot.keyPress(key);
        }
        robot.keyPress(code);
        robot.keyRelease(code);
        for (int i = held.length - 1; i >= 0; i--) {
            robot.keyRelease(held[i]);
        }
        return this;
    }
}
