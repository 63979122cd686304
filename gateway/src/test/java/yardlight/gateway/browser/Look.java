package yardlight.gateway.browser;

import java.util.Locale;

/** What a page is looked at with. */
public enum Look {
    PHONE_BY_DAY(390, 844, false),
    PHONE_AT_NIGHT(390, 844, true),
    DESK_BY_DAY(1280, 800, false),
    DESK_AT_NIGHT(1280, 800, true);

    final int width;
    final int height;
    final boolean dark;

    Look(int width, int height, boolean dark) {
        this.width = width;
        this.height = height;
        this.dark = dark;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
