package rigbrief.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A font that documents on paper are set in; it comes with the program.
 *
 * @param family what print styles call it
 * @param bold whether it is the heavier cut
 * @param resource where it lies
 */
record PaperFont(String family, boolean bold, String resource) {
    /** The last one is what the PDF library brings for the characters that the others lack. */
    static final List<PaperFont> ALL =
            List.of(
                    own("sheet-sans", false, "SourceSans3_400Regular.ttf"),
                    own("sheet-sans", true, "SourceSans3_600SemiBold.ttf"),
                    own("sheet-serif", true, "SourceSerif4_600SemiBold.ttf"),
                    new PaperFont(
                            "sheet-rest",
                            false,
                            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf"));

    private static PaperFont own(String family, boolean bold, String file) {
        return new PaperFont(family, bold, "/rigbrief/fonts/" + file);
    }

    /**
     * The font, ready to set a document in.
     *
     * <p>Without ligatures: a joined glyph has no letter to be found by, so that a reader who
     * searches the document, or has it read out, would miss it.
     */
    PDType0Font in(PDDocument document) throws IOException {
        TrueTypeFont font = parsed();
        font.setEnableGsub(false);
        return PDType0Font.load(document, font, true);
    }

    /** Its tables. */
    TrueTypeFont parsed() throws IOException {
        try (InputStream bytes = open()) {
            return new TTFParser().parse(new RandomAccessReadBuffer(bytes));
        }
    }

    private InputStream open() {
        InputStream bytes = PaperFont.class.getResourceAsStream(resource);
        if (bytes == null) {
            throw new UncheckedIOException(
                    new IOException("found no font " + resource + ", expected it in the program"));
        }
        return bytes;
    }
}
