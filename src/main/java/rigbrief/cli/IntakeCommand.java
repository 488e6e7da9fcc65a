package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigbrief.catalogue.Catalogue;
import rigbrief.file.BriefWriter;
import rigbrief.file.SafeWriter;
import rigbrief.intake.Interview;
import rigbrief.intake.LeanSearch;
import rigbrief.report.InterviewText;
import rigbrief.report.page.FormPage;
import rigbrief.report.page.Words;
import rigbrief.wording.Texts;

/** Asks a client in plain words and writes a brief. */
@Command(
        name = "intake",
        description =
                "Asks what is wanted in plain words and writes a brief, or makes a page on which"
                        + " clients answer by themselves.",
        footer = {"", "Next: rigbrief propose BRIEF"})
final class IntakeCommand implements Callable<Integer> {
    private final Console console;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            defaultValue = "brief.yaml",
            description = "Brief to write. Default: ${DEFAULT-VALUE}.")
    private Path out;

    @Option(
            names = "--form",
            paramLabel = "FILE",
            description = "Asks nothing; writes a page (HTML) that a client fills in.")
    private Path form;

    @Option(
            names = "--resume",
            description = "Goes on from the answers that an interrupted run kept.")
    private boolean resume;

    @Option(
            names = "--language",
            paramLabel = "LANGUAGE",
            converter = LanguageOption.Known.class,
            description =
                    "Language of the questions or the page: en, de. Default: en. The brief is the"
                            + " same for the same answers.")
    private Locale language = Locale.ENGLISH;

    @Option(
            names = "--force",
            description =
                    "Overwrites a file that is there; with answers out of a pipe, drops those that"
                            + " an interrupted run kept.")
    private boolean force;

    @Mixin private CatalogueOption catalogue;

    IntakeCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        refuseIfTaken(form == null ? out : form);
        KeptInputs.of(catalogue).refuse(form == null ? out : form);
        Catalogue parts = new InputFiles(console).catalogue(catalogue);
        return (form == null ? interview(parts) : page(parts)).code();
    }

    /** The options that the next command needs as well. */
    private String again() {
        boolean english = language.equals(Locale.ENGLISH);
        return (english ? "" : " --language " + language) + catalogue.repeated();
    }

    private void refuseIfTaken(Path file) throws NotWritten {
        if (file.getFileName() == null || Files.isDirectory(file)) {
            throw new NotWritten(file + ": found a folder, expected a file name; choose another");
        }
        if (!force && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new NotWritten(
                    file + ": found a file of that name; choose another name, or add --force");
        }
    }

    private ExitStatus page(Catalogue parts) throws NotWritten {
        write(form, FormPage.write(parts, Words.of(language)));
        console.line("%s: a page to send to the client, who sends the brief back.".formatted(form));
        NextLine.print(console, "rigbrief propose BRIEF" + again());
        return ExitStatus.DONE;
    }

    private ExitStatus interview(Catalogue parts) throws Exception {
        AnswersFile kept = AnswersFile.of(out);
        kept.refuseStrange();
        // At a terminal kept answers are taken up in any case: going back undoes them.
        boolean takesUp = resume || console.interactive();
        if (!takesUp && !force) {
            kept.refuseAnswers();
        }
        Interview interview =
                new Interview(name(), parts, new LeanSearch(parts, LeanSearch.USUAL_STEPS));
        InterviewText text = new InterviewText(console.style(), Texts.of(language));
        console.print(text.welcome(out.toString()));
        if (takesUp) {
            takeUp(interview, kept, text);
        }
        try (AnswerSource answers =
                console.interactive()
                        ? TerminalAnswers.ofProcess(text)
                        : new PipedAnswers(console)) {
            if (!new Conversation(console, interview, answers, kept, text).hold()) {
                return stopped(interview, kept, text);
            }
        }
        write(out, BriefWriter.write(interview.brief()));
        kept.remove();
        console.line(text.line("intake.written", out.toString()).strip());
        NextLine.print(console, "rigbrief propose " + ShellWord.of(out) + again());
        return ExitStatus.DONE;
    }

    private void takeUp(Interview interview, AnswersFile kept, InterviewText text) {
        Map<String, String> answers = kept.read();
        if (answers.isEmpty()) {
            if (resume) {
                console.remark("note: %s: found no answers to go on from".formatted(kept.path()));
            }
            return;
        }
        int count = interview.resume(answers);
        console.line(text.line("intake.taken-up", count, kept.path().toString()).strip());
    }

    private ExitStatus stopped(Interview interview, AnswersFile kept, InterviewText text) {
        int count = interview.answers().size();
        console.remark(text.line("intake.stopped", count, kept.path().toString()).strip());
        console.remark(
                "Next: rigbrief intake --out %s --resume%s".formatted(ShellWord.of(out), again()));
        return ExitStatus.BAD_INPUT;
    }

    /** A brief is called as its file without the ending. */
    private String name() {
        String file = out.getFileName().toString();
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }

    private void write(Path file, String text) throws NotWritten {
        try {
            SafeWriter.write(file, text, force);
        } catch (IOException e) {
            throw NotWritten.of(file, e, "choose another name");
        }
    }
}
