package rigbrief.proposal.replace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.catalogue.Catalogue;
import rigbrief.catalogue.Offer;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BuildReader;
import rigbrief.file.BuildWriter;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.search.SmallWorld;

/**
 * A newer catalogue has withdrawn each part of a build in turn: not only its offers, its data too.
 *
 * <p>Check: what is not here yet is replaced as if it were sold out in the older catalogue, which
 * still has its data; what is here stays, and the build file alone keeps it known.
 */
class WithdrawnPartTest {
    @ParameterizedTest
    @ValueSource(strings = {"tight-600", "keeper"})
    void each_part_in_turn_is_withdrawn(String scenario) throws BadInput {
        Catalogue old = SmallWorld.sample();
        Brief brief = SmallWorld.scenario(scenario, old);
        List<Proposal> proposals =
                new Proposer(SearchLimits.usual()).propose(brief, old).proposals();
        BuildRecord lean = proposals.get(0).record();
        for (BuildLine line : lean.lines()) {
            if (!line.kept()) {
                Catalogue now = without(old, line.part());
                wanted(lean, line, old, now);
                faulty(lean, line, old, now);
                here(lean, line, now);
            }
        }
    }

    private static void wanted(BuildRecord lean, BuildLine line, Catalogue old, Catalogue now) {
        Replacement soldOut =
                replacer(old).leastChange(lean, Trouble.without(line.part().id()), old);

        Replacement withdrawn = replacer(old).leastChange(lean, Trouble.NONE, now);

        same(withdrawn, soldOut, lean, now);
        assertThat(withdrawn.ways())
                .allSatisfy(
                        way ->
                                assertThat(way.record().build().filled().values())
                                        .doesNotContain(line.part()));
    }

    private static void faulty(BuildRecord lean, BuildLine line, Catalogue old, Catalogue now)
            throws BadInput {
        String id = line.part().id();
        BuildRecord here = all(lean, PartState.RECEIVED);
        Replacement soldOut =
                replacer(old)
                        .leastChange(
                                here,
                                new Trouble(List.of(id), List.of(id), java.util.Map.of()),
                                old);

        // The build is read with the newer catalogue alone: nobody kept the older one.
        Replacement withdrawn =
                replacer(old)
                        .leastChange(
                                read(here, now),
                                new Trouble(List.of(), List.of(id), java.util.Map.of()),
                                now);

        same(withdrawn, soldOut, lean, now);
    }

    private static void here(BuildRecord lean, BuildLine line, Catalogue now) throws BadInput {
        BuildRecord here = all(lean, PartState.FITTED);

        BuildRecord read = read(here, now);

        assertThat(read).isEqualTo(here);
        assertThat(read.line(line.slot()).orElseThrow().part()).isEqualTo(line.part());
        Replacement answer = replacer(now).replace(read, Trouble.NONE, now);
        assertThat(answer.nothingToDo()).isTrue();
        assertThat(
                        new Auditor(read.brief().orElseThrow(), now, Ordered.of(read, now))
                                .audit(read)
                                .fits())
                .as("%s fitted and withdrawn", line.part().id())
                .isTrue();
    }

    private static void same(
            Replacement found, Replacement expected, BuildRecord lean, Catalogue now) {
        assertThat(found.impossible()).isEqualTo(expected.impossible());
        assertThat(found.ways()).hasSameSizeAs(expected.ways());
        for (int i = 0; i < found.ways().size(); i++) {
            Way way = found.ways().get(i);
            assertThat(way.audit().build()).isEqualTo(expected.ways().get(i).audit().build());
            assertThat(way.extraMinor()).isEqualTo(expected.ways().get(i).extraMinor());
            assertThat(way.audit().fits()).isTrue();
            assertThat(way.record().brief()).isEqualTo(lean.brief());
            assertThat(way.record().catalogueDigest()).isEqualTo(now.digest());
        }
    }

    private static BuildRecord read(BuildRecord record, Catalogue now) throws BadInput {
        byte[] file = BuildWriter.write(record).getBytes(StandardCharsets.UTF_8);
        return BuildReader.read(new ByteArrayInputStream(file), "build", now);
    }

    private static BuildRecord all(BuildRecord record, PartState state) {
        List<BuildLine> lines = new ArrayList<>();
        for (BuildLine line : record.lines()) {
            lines.add(
                    line.kept()
                            ? line
                            : new BuildLine(
                                    line.slot(),
                                    line.part(),
                                    line.pieces(),
                                    line.supplier(),
                                    line.unitPrice(),
                                    state,
                                    false));
        }
        return record.with(lines, record.aside(), record.history());
    }

    private static Replacer replacer(Catalogue catalogue) {
        return new Replacer(Limits.usual(), Disturbance.usual(catalogue.currency()));
    }

    private static Catalogue without(Catalogue all, Part withdrawn) {
        List<Part> parts = new ArrayList<>();
        List<Offer> offers = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            for (Part part : all.parts(kind)) {
                if (!Set.of(withdrawn).contains(part)) {
                    parts.add(part);
                    offers.addAll(all.offers(part.id()));
                }
            }
        }
        return new Catalogue(
                all.name(),
                all.currency(),
                all.asOf().plusDays(7),
                "sha256:newer",
                all.reference(),
                all.suppliers(),
                parts,
                offers,
                all.workloads());
    }
}
