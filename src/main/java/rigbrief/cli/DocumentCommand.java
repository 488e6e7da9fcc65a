package rigbrief.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.Quotation;
import rigbrief.report.page.Document;
import rigbrief.report.page.DocumentSubject;
import rigbrief.report.page.Documents;
import rigbrief.report.page.Words;

/** Makes a document of a build. */
@Command(
        name = "document",
        description = "Makes a document of a build, for the client or for the bench.",
        footer = {
            "",
            "Example: rigbrief document builds/potter-full.build.yaml --format pdf --out offer.pdf",
            "",
            "Next: rigbrief audit BUILD"
        })
final class DocumentCommand implements Callable<Integer> {
    private final Console console;

    @Spec private CommandSpec spec;

    @Parameters(
            paramLabel = "BUILD",
            description = "Build file, or a list of part ids; - is standard input.")
    private String build;

    @Option(
            names = "--what",
            paramLabel = "DOCUMENT",
            defaultValue = "proposal",
            converter = What.class,
            completionCandidates = What.class,
            description = "Which: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    private Document what;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "How to write: ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
    private Format format;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "File to write into. Default: standard output.")
    private Path out;

    @Option(names = "--force", description = "Overwrites a file that is there.")
    private boolean force;

    @Option(
            names = "--brief",
            paramLabel = "BRIEF",
            description = "Brief to judge by. Default: the one in the build file, or none.")
    private String brief;

    @Mixin private LanguageOption language;
    @Mixin private CatalogueOption catalogue;

    DocumentCommand(Console console) {
        this.console = console;
    }

    /** How a document is written. */
    enum Format {
        HTML,
        PDF,
        TEXT,
        CSV;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Override
    public Integer call() throws Exception {
        if (out != null) {
            PageOutput.refuseIfTaken(out, force);
            KeptInputs.of(catalogue, build, brief).refuse(out);
        }
        InputFiles.Subject read = new InputFiles(console).subject(catalogue, build, brief);
        Catalogue parts = read.parts();
        BuildRecord filed = read.filed();
        Brief wanted = read.brief();
        if (what.wholeMachine()) {
            WholeMachine.check(filed.build(), build);
        }
        warnOfChange(filed, parts);
        Audit audit = new Auditor(wanted, parts).audit(filed);
        write(new DocumentSubject(build, filed, wanted, parts, audit));
        return ExitStatus.DONE.code();
    }

    private void warnOfChange(BuildRecord filed, Catalogue parts) {
        boolean another =
                !filed.catalogueDigest().isEmpty()
                        && !filed.catalogueDigest().equals(parts.digest());
        if (another) {
            console.remark(
                    "note: the build was made with another catalogue, or this one has changed since;"
                            + " prices are today's");
        }
    }

    private void write(DocumentSubject subject) throws NotWritten {
        Words words = language.words(subject.brief());
        PageOutput output = new PageOutput(console, force);
        if (format == Format.TEXT && out == null) {
            console.print(what.text(subject, words));
            NextLine.print(console, next());
            return;
        }
        output.write(bytes(subject, words), out);
        console.remark("Next: " + next());
    }

    private byte[] bytes(DocumentSubject subject, Words words) {
        return switch (format) {
            case TEXT -> what.text(subject, words).getBytes(StandardCharsets.UTF_8);
            case CSV ->
                    what.csv(subject).orElseThrow(this::noList).getBytes(StandardCharsets.UTF_8);
            case HTML, PDF ->
                    PageOutput.bytes(what.page(subject, words), words, format == Format.PDF);
        };
    }

    private ParameterException noList() {
        return new ParameterException(
                spec.commandLine(),
                "--format: found csv, expected text, html or pdf for %s; only orders is a list"
                        .formatted(what.word()));
    }

    private String next() {
        String again = ShellWord.of(build) + by() + catalogue.repeated();
        return format == Format.TEXT
                ? "rigbrief document "
                        + again
                        + " --what "
                        + what.word()
                        + " --format pdf --out "
                        + what.word()
                        + ".pdf"
                : "rigbrief audit " + again;
    }

    private String by() {
        return brief == null ? "" : " --brief " + ShellWord.of(brief);
    }

    /** The documents by their words. */
    static final class What implements ITypeConverter<Document>, Iterable<String> {
        private static final List<String> WORDS =
                Documents.ALL.stream().map(Document::word).toList();

        @Override
        public Document convert(String word) {
            for (Document document : Documents.ALL) {
                if (document.word().equals(word)) {
                    return document;
                }
            }
            throw new TypeConversionException(
                    "found %s, expected one of %s; choose one of them"
                            .formatted(Quotation.of(word), String.join(", ", WORDS)));
        }

        @Override
        public Iterator<String> iterator() {
            return WORDS.iterator();
        }
    }
}
