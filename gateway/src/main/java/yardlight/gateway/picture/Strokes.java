package yardlight.gateway.picture;

import java.util.HashMap;
import java.util.Map;

/**
 * The few characters that a drawing has, as strokes of a pen on a sheet of 4 by 6, from the upper left. A machine without
 * fonts draws them as well.
 */
final class Strokes {

    private static final int HIGH = 6;
    /** From the left edge of one character to that of the next. */
    private static final double ADVANCE = 5.6;

    private static final Map<Character, String> PEN = pen();

    private Strokes() {}

    /** Each pair of digits is a place; a blank lifts the pen. */
    private static Map<Character, String> pen() {
        var pen = new HashMap<Character, String>();
        pen.put('0', "103041453616050110");
        pen.put('1', "112026 1636");
        pen.put('2', "01103041420646");
        pen.put('3', "011030414233133344453616 1605");
        pen.put('4', "36300444");
        pen.put('5', "400003334445361605");
        pen.put('6', "413010010516364544331304");
        pen.put('7', "00404126");
        pen.put('8', "13020110304142331304051636454433");
        pen.put('9', "051636454130100102133342");
        pen.put('.', "1616");
        pen.put(':', "1212 1616");
        pen.put('-', "0333");
        pen.put('A', "062046 1434");
        pen.put('M', "0600234046");
        pen.put('P', "06003041423303");
        return pen;
    }

    static double width(String text, double size) {
        return (text.length() * ADVANCE - (ADVANCE - 4)) * size / HIGH;
    }

    /** So high, with its upper left corner there; characters that have no strokes leave a blank. */
    static void write(Canvas canvas, String text, double left, double top, double size, int colour) {
        double scale = size / HIGH;
        double thick = Math.max(1.2, size / 8);
        for (int i = 0; i < text.length(); i++) {
            for (String stroke : PEN.getOrDefault(text.charAt(i), "").split(" ")) {
                stroke(canvas, stroke, left + i * ADVANCE * scale, top, scale, thick, colour);
            }
        }
    }

    private static void stroke(
            Canvas canvas, String places, double left, double top, double scale, double thick, int colour) {
        for (int i = 0; i + 3 < places.length(); i += 2) {
            canvas.line(
                    left + digit(places, i) * scale,
                    top + digit(places, i + 1) * scale,
                    left + digit(places, i + 2) * scale,
                    top + digit(places, i + 3) * scale,
                    thick,
                    colour);
        }
    }

    private static int digit(String places, int i) {
        return places.charAt(i) - '0';
    }
}
