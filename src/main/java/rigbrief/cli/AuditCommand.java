package rigbrief.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rigbrief.api.Rigbrief;
import rigbrief.audit.OpenBrief;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.report.AuditAnswer;
import rigbrief.report.AuditJson;
import rigbrief.report.AuditText;

/** Judges a build. */
@Command(
        name = "audit",
        description =
                "Judges a build file or a list of part ids: every broken rule and every margin.",
        footer = {"", "Next: rigbrief propose BRIEF"})
final class AuditCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            paramLabel = "BUILD",
            description = "Build file, or a list of part ids; - is standard input.")
    private String build;

    @Option(
            names = "--brief",
            paramLabel = "BRIEF",
            description = "Brief to judge by. Default: the one in the build file, or none.")
    private String brief;

    @Mixin private CatalogueOption catalogue;
    @Mixin private FormatOption format;

    AuditCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws Exception {
        InputFiles.Subject read = new InputFiles(console).subject(catalogue, build, brief);
        Catalogue parts = read.parts();
        BuildRecord filed = read.filed();
        Brief wanted = read.brief();
        Rigbrief shop = Rigbrief.of(parts);
        warnOfChange(filed, parts);
        AuditAnswer answer = shop.audit(build, filed, wanted);
        format.print(console, new AuditText(), new AuditJson(), answer, next(answer));
        return (answer.audit().fits() ? ExitStatus.DONE : ExitStatus.BREAKS).code();
    }

    private void warnOfChange(BuildRecord filed, Catalogue parts) {
        boolean another =
                !filed.catalogueDigest().isEmpty()
                        && !filed.catalogueDigest().equals(parts.digest());
        if (another) {
            console.remark(
                    "note: the build was made with another catalogue, or this one has changed since;"
                            + " prices are today's but for what is ordered or here");
        }
    }

    private String next(AuditAnswer answer) {
        String again = "rigbrief audit " + ShellWord.of(build) + catalogue.repeated();
        if (!answer.audit().fits()) {
            return "change what is broken, then " + again;
        }
        if (brief != null) {
            return "rigbrief propose " + ShellWord.of(brief) + catalogue.repeated();
        }
        return answer.brief().name().equals(OpenBrief.NAME)
                ? again + " --brief BRIEF"
                : again + " --format json";
    }
}
