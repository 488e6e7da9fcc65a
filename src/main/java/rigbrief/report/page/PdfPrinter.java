package rigbrief.report.page;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/**
 * Makes a PDF of a page that is well-formed XML.
 *
 * <p>Loads nothing, from nowhere. The same page gives the same bytes: no date, a fixed document id.
 */
final class PdfPrinter {
    private static final int REGULAR = 400;
    private static final int SEMIBOLD = 600;

    /** What stands for the page's own address, which it has none of. */
    private static final String NOWHERE = "about:blank";

    // What the library has to tell is no concern of the reader.
    static {
        XRLog.setLoggingEnabled(false);
    }

    private PdfPrinter() {}

    static byte[] print(String xhtml, Words words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BatikSVGDrawer drawer = new BatikSVGDrawer();
                PDDocument document = new PDDocument();
                PdfBoxRenderer renderer =
                        builder(Covered.text(xhtml), drawer, document)
                                .toStream(out)
                                .buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            finish(document, words);
            document.save(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static PdfRendererBuilder builder(
            String xhtml, BatikSVGDrawer drawer, PDDocument document) throws IOException {
        PdfRendererBuilder builder =
                new PdfRendererBuilder()
                        .withHtmlContent(xhtml, NOWHERE)
                        .useSVGDrawer(drawer)
                        .usePDDocument(document)
                        .useFastMode()
                        .useUriResolver((base, uri) -> null)
                        .withProducer("rigbrief");
        for (PaperFont font : PaperFont.ALL) {
            builder.useFont(
                    new PDFontSupplier(font.in(document)),
                    font.family(),
                    font.bold() ? SEMIBOLD : REGULAR,
                    FontStyle.NORMAL,
                    true);
        }
        return builder;
    }

    private static void finish(PDDocument document, Words words) {
        PDDocumentInformation information = document.getDocumentInformation();
        information.setCreationDate(null);
        information.setModificationDate(null);
        document.getDocumentCatalog().setLanguage(words.language().toLowerCase(Locale.ROOT));
        document.setDocumentId(0L);
    }
}
