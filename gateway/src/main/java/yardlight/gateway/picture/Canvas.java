package yardlight.gateway.picture;

import java.util.Arrays;

/** A sheet of dots on which lines are drawn, with soft edges. Places outside are left out. */
final class Canvas {

    /** Of a soft edge: more of them nobody sees, and the picture would be twice as large. */
    private static final int SHADES = 4;

    private final int width;
    private final int height;
    /** Red, green and blue in one number each, as in {@code 0xfbf9f3}. */
    private final int[] dots;

    Canvas(int width, int height, int paper) {
        this.width = width;
        this.height = height;
        this.dots = new int[width * height];
        Arrays.fill(dots, paper);
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    int dot(int x, int y) {
        return dots[y * width + x];
    }

    /** A filled box; the right and the lower edge are exclusive. */
    void box(double left, double top, double right, double bottom, int colour) {
        for (int y = inside((int) Math.rint(top), height); y < inside((int) Math.rint(bottom), height); y++) {
            for (int x = inside((int) Math.rint(left), width); x < inside((int) Math.rint(right), width); x++) {
                dots[y * width + x] = colour;
            }
        }
    }

    private static int inside(int place, int size) {
        return Math.max(0, Math.min(size, place));
    }

    /** A line with round ends, so many dots thick. */
    void line(double x1, double y1, double x2, double y2, double thick, int colour) {
        double reach = thick / 2 + 1;
        int top = inside((int) Math.floor(Math.min(y1, y2) - reach), height);
        int bottom = inside((int) Math.ceil(Math.max(y1, y2) + reach), height);
        int left = inside((int) Math.floor(Math.min(x1, x2) - reach), width);
        int right = inside((int) Math.ceil(Math.max(x1, x2) + reach), width);
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                double covered = thick / 2 + 0.5 - distance(x + 0.5, y + 0.5, x1, y1, x2, y2);
                if (covered > 0) {
                    blend(y * width + x, colour, Math.rint(Math.min(1, covered) * SHADES) / SHADES);
                }
            }
        }
    }

    /** From a dot's middle to the nearest place of the line. */
    private static double distance(double x, double y, double x1, double y1, double x2, double y2) {
        double dx = x2 - x1;
        double dy = y2 - y1;
        double length = dx * dx + dy * dy;
        double along = length == 0 ? 0 : Math.max(0, Math.min(1, ((x - x1) * dx + (y - y1) * dy) / length));
        return Math.hypot(x - x1 - along * dx, y - y1 - along * dy);
    }

    private void blend(int place, int colour, double part) {
        int below = dots[place];
        dots[place] = mixed(below, colour, part, 16) | mixed(below, colour, part, 8) | mixed(below, colour, part, 0);
    }

    private static int mixed(int below, int colour, double part, int shift) {
        int a = below >> shift & 0xFF;
        int b = colour >> shift & 0xFF;
        return (int) Math.rint(a + (b - a) * part) << shift;
    }
}
