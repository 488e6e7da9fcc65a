package rigbrief.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessor;
import rigbrief.assess.Cost;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;

/** Files a build with supplier and price of every part. */
final class Filing {
    private final Brief brief;
    private final Catalogue catalogue;
    private final Assessor assessor;

    Filing(Brief brief, Catalogue catalogue, Assessor assessor) {
        this.brief = brief;
        this.catalogue = catalogue;
        this.assessor = assessor;
    }

    BuildRecord record(Build build, Tier tier) {
        Cost cost = assessor.assess(build).cost();
        List<BuildLine> lines = new ArrayList<>();
        build.filled().forEach((slot, part) -> lines.add(line(build, slot, part, cost)));
        return new BuildRecord(
                Optional.of(brief),
                Optional.of(tier.word()),
                catalogue.name(),
                catalogue.digest(),
                lines);
    }

    private BuildLine line(Build build, Slot slot, Part part, Cost cost) {
        Optional<Cost.Line> bought =
                cost.lines().stream().filter(line -> line.slot() == slot).findFirst();
        boolean kept = assessor.pricing().kept(slot, part);
        return new BuildLine(
                slot,
                part,
                build.pieces(slot),
                bought.map(Cost.Line::supplier),
                Money.ofMinor(bought.map(Cost.Line::unitMinor).orElse(0L), brief.currency()),
                kept ? PartState.RECEIVED : PartState.WANTED,
                kept);
    }
}
