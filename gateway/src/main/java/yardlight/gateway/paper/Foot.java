package yardlight.gateway.paper;

import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.Phrase;
import com.lowagie.text.pdf.ColumnText;
import com.lowagie.text.pdf.PdfPageEventHelper;
import com.lowagie.text.pdf.PdfWriter;
import java.util.function.IntFunction;

/** The foot of every page: what the sheet is, and the page's number. */
final class Foot extends PdfPageEventHelper {

    private static final float SIZE = 7.5f;

    private final Type type;
    private final String words;
    private final IntFunction<String> number;

    Foot(Type type, String words, IntFunction<String> number) {
        this.type = type;
        this.words = words;
        this.number = number;
    }

    @Override
    public void onEndPage(PdfWriter writer, Document document) {
        float y = document.bottom() - 18;
        put(writer, Element.ALIGN_LEFT, words, document.left(), y);
        put(writer, Element.ALIGN_RIGHT, number.apply(writer.getPageNumber()), document.right(), y);
    }

    private void put(PdfWriter writer, int where, String text, float x, float y) {
        ColumnText.showTextAligned(
                writer.getDirectContent(), where, new Phrase(type.spelled(text), type.regular(SIZE)), x, y, 0);
    }
}
