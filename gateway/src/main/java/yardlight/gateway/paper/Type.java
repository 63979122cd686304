package yardlight.gateway.paper;

import com.lowagie.text.Font;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The typeface of a sheet: it has the letters of every language that is written with Latin, Greek, Cyrillic, Hebrew or Arabic
 * ones, and goes into the file. What it has no letter for is spelled by its number in Unicode: nothing is left out.
 */
final class Type {

    private static final String PLACE = "/net/sf/jasperreports/fonts/dejavu/";

    private final BaseFont regular = read("DejaVuSansCondensed.ttf");
    private final BaseFont bold = read("DejaVuSansCondensed-Bold.ttf");
    private final BaseFont mono = read("DejaVuSansMono.ttf");

    Font regular(float size) {
        return new Font(regular, size);
    }

    Font bold(float size) {
        return new Font(bold, size);
    }

    Font mono(float size) {
        return new Font(mono, size);
    }

    /** A text as the face can show it: {@code [U+738B]} for a letter that it has not, a blank for what controls, but for the end of a line. */
    String spelled(String text) {
        var spelled = new StringBuilder();
        text.codePoints().forEach(sign -> {
            if (Character.isISOControl(sign)) {
                spelled.append(sign == '\n' ? '\n' : ' ');
            } else if (regular.charExists(sign)) {
                spelled.appendCodePoint(sign);
            } else {
                spelled.append(String.format("[U+%04X]", sign));
            }
        });
        return spelled.toString();
    }

    private static BaseFont read(String name) {
        try (InputStream file = Type.class.getResourceAsStream(PLACE + name)) {
            return BaseFont.createFont(name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, file.readAllBytes(), null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
