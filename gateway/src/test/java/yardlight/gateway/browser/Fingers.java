package yardlight.gateway.browser;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;

/** One or two fingers on an element of a page, which they touch as on a phone's screen. */
final class Fingers {

    private static final int STEPS = 40;

    private final Page page;
    private final String element;
    private final CDPSession tools;

    /**
     * @param element the first that this selector finds
     */
    Fingers(Page page, String element) {
        this.page = page;
        this.element = element;
        this.tools = page.context().newCDPSession(page);
        var on = new JsonObject();
        on.addProperty("enabled", true);
        on.addProperty("maxTouchPoints", 2);
        tools.send("Emulation.setTouchEmulationEnabled", on);
    }

    /** Two of them, each this far from the middle in the beginning and in the end. */
    void pinch(double from, double to) {
        BoundingBox box = box();
        double x = box.x + box.width / 2;
        double y = box.y + box.height / 2;
        touch("touchStart", y, x - from, x + from);
        for (int i = 1; i <= STEPS; i++) {
            double apart = from + (to - from) * i / STEPS;
            touch("touchMove", y, x - apart, x + apart);
        }
        touch("touchEnd", y);
    }

    /** One of them, to the right. */
    void pull(double by) {
        BoundingBox box = box();
        double y = box.y + box.height / 2;
        double x = box.x + 60;
        touch("touchStart", y, x);
        for (int i = 1; i <= STEPS; i++) {
            touch("touchMove", y, x + by * i / STEPS);
        }
        touch("touchEnd", y);
    }

    private BoundingBox box() {
        page.locator(element).first().scrollIntoViewIfNeeded();
        return page.locator(element).first().boundingBox();
    }

    private void touch(String type, double y, double... xs) {
        var points = new JsonArray();
        for (int i = 0; i < xs.length; i++) {
            var point = new JsonObject();
            point.addProperty("x", xs[i]);
            point.addProperty("y", y);
            point.addProperty("id", i);
            points.add(point);
        }
        var event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        tools.send("Input.dispatchTouchEvent", event);
    }
}
