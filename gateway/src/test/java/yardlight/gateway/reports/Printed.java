package yardlight.gateway.reports;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** A PDF as it is read by PDFBox, which did not write it. */
record Printed(int pages, String text, String attached) {

    private static final int DPI = 110;

    /** @param picture where its first page is put to be looked at, without the end of its name */
    static Printed of(byte[] pdf, String picture) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY);
            Path file = Path.of("target", "reports", picture + ".png");
            Files.createDirectories(file.getParent());
            ImageIO.write(image, "png", file.toFile());
            return new Printed(document.getNumberOfPages(), new PDFTextStripper().getText(document), head(document));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Words broken over lines in a cell are words all the same. */
    String flowing() {
        return text.replaceAll("\\s+", " ");
    }

    private static String head(PDDocument document) throws IOException {
        var files = document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
        return new String(
                files.get("head.json").getEmbeddedFile().toByteArray(), java.nio.charset.StandardCharsets.UTF_8);
    }
}
