package yardlight.gateway.page;

import jakarta.servlet.http.HttpServletRequest;

/**
 * Something that every page may say. Given to pages only: as attributes of a controller advice they would be made for each post of a box as
 * well.
 */
public interface PageFact {

    /** What templates call it. */
    String name();

    /** What this page may say. Asked for each page, so that it must cost nothing until the page says it. */
    Object of(HttpServletRequest request);
}
