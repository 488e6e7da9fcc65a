package rigbrief.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.brief.WorkloadNeed;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.catalogue.Workload;
import rigbrief.wording.Phrase;

/** What will run on the computer, and what of it at the same time. */
final class WorkloadSteps {
    /** Weight of a workload among the workloads when nothing is said. */
    static final int USUAL_WEIGHT = 3;

    private static final String TOPIC = "use";

    private WorkloadSteps() {}

    static List<Question> choosing(Sheet sheet) {
        List<Choice> offered =
                sheet.catalogue().workloads().stream().map(WorkloadSteps::choice).toList();
        return List.of(
                Asking.about(TOPIC, "workloads")
                        .choices(offered)
                        .several()
                        .names(sheet.catalogue().workloads().stream().map(Workload::title).toList())
                        .usual(Entries.NONE)
                        .read(typed -> chosen(sheet, offered, typed)));
    }

    private static Answer chosen(Sheet sheet, List<Choice> offered, String typed)
            throws NotUnderstood {
        List<Choice> chosen = Entries.choices(offered, typed);
        List<String> ids = chosen.stream().map(Choice::word).toList();
        Brief brief =
                sheet.draft()
                        .workloads(ids.stream().map(WorkloadSteps::untold).toList())
                        .storage(
                                new Brief.StorageNeed(
                                        sheet.brief().storage().atLeastGb(),
                                        ids,
                                        sheet.brief().storage().years()))
                        .toBrief();
        return new Answer(Entries.words(chosen), brief, consequence(sheet.catalogue(), ids));
    }

    private static WorkloadNeed untold(String id) {
        return new WorkloadNeed(id, Optional.empty(), Optional.empty(), USUAL_WEIGHT, NO_SETTINGS);
    }

    /** A workload as its maker ships it. */
    static final WorkloadNeed.Settings NO_SETTINGS =
            new WorkloadNeed.Settings(Optional.empty(), Optional.empty(), Optional.empty());

    private static Phrase consequence(Catalogue catalogue, List<String> ids) {
        if (ids.isEmpty()) {
            return Phrase.of("then.workloads.none");
        }
        double diskGb = 0;
        for (String id : ids) {
            diskGb += catalogue.workload(id).map(Workload::diskGb).orElse(0.0);
        }
        return Phrase.of("then.workloads", ids.size(), (long) Math.ceil(diskGb));
    }

    private static Choice choice(Workload workload) {
        return new Choice(workload.id(), Phrase.data(workload.title()), meaning(workload));
    }

    /** What a workload is, in a few words. */
    static Phrase meaning(Workload workload) {
        if (workload instanceof FrameRate) {
            return Phrase.of("use.game");
        }
        if (workload instanceof TaskTime task) {
            return Phrase.of("use.task", task.job());
        }
        Capacity capacity = (Capacity) workload;
        long gb = (long) Math.ceil(capacity.diskGb());
        return capacity.growthGbPerYear() > 0
                ? Phrase.of("use.growing", gb)
                : Phrase.of("use.room", gb);
    }

    static List<Question> atOnce(Sheet sheet) {
        List<Choice> offered = new ArrayList<>();
        for (WorkloadNeed need : sheet.brief().workloads()) {
            sheet.catalogue()
                    .workload(need.use())
                    .map(WorkloadSteps::choice)
                    .ifPresent(offered::add);
        }
        if (offered.size() < 2) {
            return List.of();
        }
        return List.of(
                Asking.about(TOPIC, "open-at-once")
                        .choices(offered)
                        .several()
                        .usual(Entries.NONE)
                        .read(typed -> open(sheet, offered, typed)));
    }

    private static Answer open(Sheet sheet, List<Choice> offered, String typed)
            throws NotUnderstood {
        List<Choice> open = Entries.choices(offered, typed);
        List<Phrase> labels = open.stream().map(Choice::label).toList();
        return new Answer(
                Entries.words(open),
                sheet.draft().atOnce(open.stream().map(Choice::word).toList()).toBrief(),
                open.isEmpty()
                        ? Phrase.of("then.open-at-once.none")
                        : Phrase.of("then.open-at-once", Phrase.list(labels)));
    }

    /** The brief with one of its workload needs exchanged for another of the same use. */
    static Brief with(Sheet sheet, WorkloadNeed changed) {
        return sheet.draft()
                .workloads(
                        sheet.brief().workloads().stream()
                                .map(need -> need.use().equals(changed.use()) ? changed : need)
                                .toList())
                .toBrief();
    }

    /** The need of a workload in the brief so far. */
    static WorkloadNeed need(Sheet sheet, String id) {
        return sheet.brief().workloads().stream()
                .filter(need -> need.use().equals(id))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalStateException(
                                        ("workload %s is asked about and not chosen;"
                                                        + " ask for chosen ones alone")
                                                .formatted(id)));
    }
}
