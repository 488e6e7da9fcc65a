package rigbrief.report.page;

import freemarker.cache.ClassTemplateLoader;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.utility.DeepUnwrap;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rigbrief.diagnostic.Quotation;

/**
 * Writes pages: one file that needs no other, as HTML for screens or as PDF for paper.
 *
 * <p>Templates escape whatever they show. The page's policy (Content Security Policy Level 3, W3C)
 * lets nothing be loaded and only its own style and script act, each known by its SHA-256.
 */
public final class PageWriter {
    private static final String FOLDER = "/rigbrief/page/";

    /** Countries that write on Letter paper; common practice, the others use A4 of ISO 216. */
    private static final List<String> LETTER =
            List.of("US", "CA", "MX", "PH", "CL", "CO", "VE", "GT", "CR", "PA", "NI", "SV");

    private static final Configuration TEMPLATES = templates();

    private PageWriter() {}

    private static Configuration templates() {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setTemplateLoader(new ClassTemplateLoader(PageWriter.class, FOLDER));
        configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        configuration.setFallbackOnNullLoopVariable(false);
        // Numbers reach a template as texts; one that does not must not be grouped by accident.
        configuration.setNumberFormat("computer");
        configuration.setLocale(Locale.ROOT);
        return configuration;
    }

    /** The page for screens. */
    public static String html(Page page, Words words) {
        return write(page, words, false);
    }

    /** The page on paper, A4 or Letter by the reader's country. */
    public static byte[] pdf(Page page, Words words) {
        return PdfPrinter.print(write(page, words, true), words);
    }

    private static String write(Page page, Words words, boolean print) {
        Map<String, Object> model = new HashMap<>(page.model());
        Optional<String> script = print ? Optional.empty() : page.script();
        String style = resource(print ? "print.css" : "style.css").replace("@PAPER@", paper(words));
        String acting = script.map(PageWriter::resource).orElse("");
        model.put("t", (TemplateMethodModelEx) places -> text(words, places));
        model.put("title", page.title());
        model.put("language", words.language());
        model.put("print", print);
        model.put("style", style);
        model.put("script", acting);
        model.put("policy", policy(style, acting));
        StringWriter out = new StringWriter();
        try {
            Template template = TEMPLATES.getTemplate(page.template());
            template.process(model, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (TemplateException e) {
            throw new IllegalStateException(
                    "template %s can't be written: %s; mend the template or its model"
                            .formatted(page.template(), e.getMessage()),
                    e);
        }
        return visible(out.toString());
    }

    /** What prints nothing of its own is spelt out, so that no name can pose as another. */
    private static String visible(String page) {
        StringBuilder safe = new StringBuilder(page.length());
        for (String line : page.split("\n", -1)) {
            safe.append(safe.isEmpty() ? "" : "\n").append(Quotation.visible(line));
        }
        return safe.toString();
    }

    private static String text(Words words, List<?> places) throws TemplateModelException {
        Object[] filled = new Object[places.size() - 1];
        for (int i = 0; i < filled.length; i++) {
            filled[i] = DeepUnwrap.unwrap((TemplateModel) places.get(i + 1));
        }
        return words.text(places.get(0).toString(), filled);
    }

    /** The name of the paper size in CSS. */
    static String paper(Words words) {
        return LETTER.contains(words.locale().getCountry()) ? "letter" : "A4";
    }

    private static String policy(String style, String script) {
        return "default-src 'none'; style-src '%s'; script-src %s; base-uri 'none'; form-action 'none'"
                .formatted(sha256(style), script.isEmpty() ? "'none'" : "'" + sha256(script) + "'");
    }

    private static String sha256(String text) {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256")
                            .digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String resource(String name) {
        try (InputStream in = PageWriter.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException(
                        "found no %s%s, expected it in the program; package it"
                                .formatted(FOLDER, name));
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
