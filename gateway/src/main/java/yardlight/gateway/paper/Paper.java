package yardlight.gateway.paper;

import com.lowagie.text.Document;
import com.lowagie.text.Font;
import com.lowagie.text.PageSize;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfFileSpecification;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;

/**
 * One PDF while it is written, from the top down. Letter size, black on white, nothing that a bad printer could lose: no grey
 * and no thin type. What is written leaves as it is made, so a long one needs little memory.
 */
public final class Paper implements AutoCloseable {

    private static final float SIDE = 48;
    private static final float EDGE = 36;
    private static final float BODY = 8.5f;
    private static final float SMALL = 8;
    private static final float LEADING = 1.2f;

    private final Document document = new Document(PageSize.LETTER, SIDE, SIDE, EDGE, EDGE + 10);
    private final Type type = new Type();
    private final PdfWriter writer;

    private Paper(OutputStream out) {
        writer = PdfWriter.getInstance(document, out);
    }

    /**
     * Begins one.
     *
     * @param title in the file's own properties
     * @param foot stands at the foot of every page, before its number
     * @param number the words for a page's number
     */
    public static Paper on(OutputStream out, String title, Locale locale, String foot, IntFunction<String> number) {
        var paper = new Paper(out);
        paper.document.addTitle(title);
        paper.document.addCreator("Yardlight");
        paper.document.setDocumentLanguage(locale.getLanguage());
        paper.writer.setPageEvent(new Foot(paper.type, foot, number));
        paper.document.open();
        return paper;
    }

    /** The first words of the sheet. */
    public void title(String words) {
        add(words, type.bold(15), 0, 2);
    }

    /** What a part of it is about. */
    public void heading(String words) {
        add(words, type.bold(11), 7, 2);
    }

    public void text(String words) {
        add(words, type.regular(BODY), 0, 3);
    }

    /** What must not be overlooked. */
    public void strong(String words) {
        add(words, type.bold(10), 5, 4);
    }

    /** Small and with letters of one width, broken wherever the line ends: for what is compared sign by sign. */
    public void exact(String words) {
        add(words, type.mono(6.5f), 2, 3);
    }

    /** A new page, if anything stands on this one. */
    public void turn() {
        document.newPage();
    }

    /**
     * A table with lines between its rows; its names come again on the next page.
     *
     * @param widths of the columns, as parts of their sum
     * @param names of the columns; none for a table without
     */
    public void table(float[] widths, List<String> names, List<List<String>> rows) {
        var table = new PdfPTable(widths);
        table.setWidthPercentage(100);
        table.setSpacingBefore(2);
        table.setSpacingAfter(4);
        names.forEach(name -> table.addCell(cell(name, type.bold(SMALL), 1)));
        table.setHeaderRows(names.isEmpty() ? 0 : 1);
        for (List<String> row : rows) {
            boolean first = names.isEmpty();
            for (String words : row) {
                table.addCell(cell(words, first ? type.bold(SMALL) : type.regular(SMALL), 0.5f));
                first = false;
            }
        }
        document.add(table);
    }

    /** Puts a small file into the PDF, for whoever wants more of it than the print. */
    public void attach(String name, byte[] content) {
        try {
            writer.addFileAttachment(name, PdfFileSpecification.fileEmbedded(writer, null, name, content));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private PdfPCell cell(String words, Font font, float line) {
        var cell = new PdfPCell(new Phrase(type.spelled(words), font));
        cell.setRunDirection(PdfWriter.RUN_DIRECTION_LTR);
        cell.setBorder(Rectangle.BOTTOM);
        cell.setBorderWidth(line);
        cell.setLeading(0, LEADING);
        cell.setPadding(0);
        cell.setPaddingTop(0.5f);
        cell.setPaddingBottom(2.5f);
        cell.setPaddingRight(6);
        return cell;
    }

    /** As a table of one cell: only there are names written from right to left put in their order. */
    private void add(String words, Font font, float before, float after) {
        var table = new PdfPTable(1);
        table.setWidthPercentage(100);
        table.setSpacingBefore(before);
        table.setSpacingAfter(after);
        PdfPCell cell = cell(words, font, 0);
        cell.setBorder(Rectangle.NO_BORDER);
        table.addCell(cell);
        document.add(table);
    }

    @Override
    public void close() {
        document.close();
    }
}
