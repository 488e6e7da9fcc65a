package rigbrief.assess;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigbrief.assess.Demand.Use;
import rigbrief.brief.Brief;
import rigbrief.brief.WorkloadNeed;
import rigbrief.catalogue.Capacity;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.Workload;

/**
 * What a brief's workloads need of any machine.
 *
 * <p>Formulas: memory = greediest workload in front + those open beside it + the system; storage =
 * (installed + growth over the years + the system) / 0.85.
 *
 * <p>Common practice: 4 GB for the system and what runs unseen, 60 GB of drive for it, 15 % of a
 * drive kept free.
 */
final class DemandModel {
    /** Memory that the system and what runs unseen take, in GB. Common practice. */
    static final double SYSTEM_MEMORY_GB = 4;

    /** Drive space that the system takes, in GB. Common practice. */
    static final double SYSTEM_DISK_GB = 60;

    /**
     * Share of a drive that data may fill. Common practice: the rest keeps it quick and long-lived.
     */
    static final double FILLED_SHARE = 0.85;

    private DemandModel() {}

    static Demand of(Brief brief, Brief valued, Catalogue catalogue) {
        List<Use> uses = new ArrayList<>();
        for (WorkloadNeed need : brief.workloads()) {
            uses.add(new Use(need, workload(catalogue, need.use()), valued(valued, need)));
        }
        double front = 0;
        double vram = 0;
        double withoutUpscaling = 0;
        for (Use use : uses) {
            front = Math.max(front, use.workload().memoryGb());
            vram = Math.max(vram, vramGb(use, brief, true));
            withoutUpscaling = Math.max(withoutUpscaling, vramGb(use, brief, false));
        }
        double beside = SYSTEM_MEMORY_GB;
        for (String id : brief.atOnce()) {
            beside += workload(catalogue, id).memoryGb();
        }
        return new Demand(
                uses,
                front + beside,
                vram,
                withoutUpscaling,
                Math.max(brief.storage().atLeastGb(), storageGb(brief, catalogue, uses)));
    }

    private static WorkloadNeed valued(Brief valued, WorkloadNeed need) {
        return valued.workloads().stream()
                .filter(other -> other.use().equals(need.use()))
                .findFirst()
                .orElse(need);
    }

    /** Graphics memory of a workload at the settings of the brief, in GB. */
    private static double vramGb(Use use, Brief brief, boolean upscales) {
        return use.workload() instanceof FrameRate frames
                ? FrameLoad.of(
                                frames,
                                use.need().settings(),
                                SpeedModel.shownMegapixels(brief),
                                upscales)
                        .vramGb()
                : use.workload().vramGb();
    }

    private static double storageGb(Brief brief, Catalogue catalogue, List<Use> uses) {
        Map<String, Workload> installed = new LinkedHashMap<>();
        for (String id : brief.storage().roomFor()) {
            installed.put(id, workload(catalogue, id));
        }
        for (Use use : uses) {
            if (use.workload() instanceof Capacity) {
                installed.put(use.workload().id(), use.workload());
            }
        }
        double sum = SYSTEM_DISK_GB;
        for (Workload workload : installed.values()) {
            sum += workload.diskGb();
            if (workload instanceof Capacity capacity) {
                sum += capacity.growthGbPerYear() * brief.storage().years();
            }
        }
        return sum / FILLED_SHARE;
    }

    private static Workload workload(Catalogue catalogue, String id) {
        return catalogue
                .workload(id)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "found workload %s, expected one of the catalogue's; check the brief when it is read"
                                                .formatted(id)));
    }
}
