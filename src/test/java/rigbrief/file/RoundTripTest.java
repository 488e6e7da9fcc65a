package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.file.FolderFixture.aFolder;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.NotBlank;
import net.jqwik.api.constraints.StringLength;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.brief.Kept;
import rigbrief.brief.Screen;
import rigbrief.brief.Wishes;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.build.BuildLine;
import rigbrief.build.BuildRecord;
import rigbrief.build.HistoryEntry;
import rigbrief.build.PartState;
import rigbrief.build.SetAside;
import rigbrief.build.Units;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.cell.PartCells;
import rigbrief.part.Colour;
import rigbrief.part.FrontPort;
import rigbrief.part.Part;
import rigbrief.part.Port;
import rigbrief.part.Resolution;
import rigbrief.part.SidePanel;
import rigbrief.part.Slot;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Money;

/** What a writer writes, a reader reads back as an equal value, whatever the value. */
class RoundTripTest {
    private static final Catalogue CATALOGUE = catalogue();

    private static Catalogue catalogue() {
        try {
            Path folder = Files.createTempDirectory("rigbrief");
            Catalogue read = CatalogueReader.read(aFolder().write(folder));
            for (String name : aFolder().texts().keySet()) {
                Files.delete(folder.resolve(name));
            }
            Files.delete(folder);
            return read;
        } catch (BadInput bad) {
            throw new IllegalStateException(bad);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Property(tries = 150)
    void a_brief_reads_back_equal(@ForAll long seed) throws BadInput {
        Brief brief = brief(new Random(seed));

        assertThat(readBrief(BriefWriter.write(brief))).isEqualTo(brief);
    }

    @Property(tries = 150)
    void any_client_name_in_one_line_reads_back_equal(
            @ForAll
                    @NotBlank
                    @StringLength(max = 60)
                    @Chars({
                        'a', ' ', ':', '#', '-', '\'', '"', '\\', '{', '[', ',', '&', '*', '!', '|',
                        '>', '%', '@', '~', '1', 'e', '.', 'é', 'ß', '木'
                    })
                    String client)
            throws BadInput {
        Brief brief = brief(new Random(1));
        Brief named = new BriefDraft(brief).client(client.strip()).toBrief();

        assertThat(readBrief(BriefWriter.write(named))).isEqualTo(named);
    }

    @Property(tries = 150)
    void a_build_reads_back_equal(@ForAll long seed) throws BadInput {
        BuildRecord build = build(new Random(seed));

        BuildRecord read =
                BuildReader.read(stream(BuildWriter.write(build)), "build.yaml", CATALOGUE);

        assertThat(read).isEqualTo(build);
    }

    private static Brief readBrief(String text) throws BadInput {
        return BriefReader.read(stream(text), "brief.yaml", CATALOGUE);
    }

    private static ByteArrayInputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Brief brief(Random random) {
        return new Brief(
                "brief",
                pick(
                        random,
                        List.of("Osier Weir", "no", "1e3", "null", "a: b", "x # y", "- z", "'q'")),
                CATALOGUE.currency(),
                1 + random.nextInt(40),
                money(random, 1),
                random.nextInt(5_001),
                50 + random.nextInt(50),
                maybe(random, screen(random)),
                workloads(random),
                some(random, List.of("vault-drawing", "map-room")),
                looks(random),
                new Brief.Noise(
                        maybeInt(random, 10, 80), maybeInt(random, 10, 80), tenths(random, 2, 100)),
                wireless(random),
                new Brief.MemoryNeed(random.nextInt(200), random.nextBoolean()),
                new Brief.StorageNeed(
                        random.nextInt(5_000),
                        some(random, List.of("sunken-lanes")),
                        random.nextInt(9)),
                size(random),
                some(random, List.of(FrontPort.values())),
                keep(random),
                new Brief.Avoid(
                        some(random, List.of("Gill", "Scar")), some(random, List.of("gill-8"))),
                new Brief.Buying(
                        some(random, List.of("millrace", "dovecote")),
                        maybeInt(random, 1, 9),
                        maybeInt(random, 0, 30),
                        random.nextBoolean()),
                new Brief.SystemNeed(
                        pick(random, List.of(Brief.Strength.values())), maybe(random, "sill-11")),
                new Brief.Place(
                        tenths(random, 0, 450),
                        tenths(random, -100, 9_000),
                        random.nextBoolean() ? 115 : 230,
                        tenths(random, 0, 240),
                        tenths(random, 0, 10),
                        random.nextInt(20_000),
                        random.nextBoolean()),
                new Brief.Headroom(20 + random.nextInt(81), random.nextInt(6), random.nextInt(41)),
                wishes(random),
                new Brief.Fees(money(random, 0), random.nextInt(10_001)));
    }

    private static Screen screen(Random random) {
        boolean buy = random.nextBoolean();
        List<Port> ports = List.of(new Port("dp1.4", 1), new Port("hdmi2.1", 3));
        return new Screen(
                new Resolution(1_920 + random.nextInt(2_000), 1_080 + random.nextInt(1_000)),
                24 + random.nextInt(400),
                6 + random.nextInt(7),
                buy ? List.of() : some(random, ports),
                1 + random.nextInt(4),
                buy,
                buy ? maybe(random, "pane-27") : Optional.empty());
    }

    private static List<WorkloadNeed> workloads(Random random) {
        double average = 60 + random.nextInt(100);
        Target frames =
                new Target(
                        OptionalDouble.of(average),
                        random.nextBoolean()
                                ? OptionalDouble.of(average / 3)
                                : OptionalDouble.empty(),
                        OptionalDouble.empty());
        Target task =
                new Target(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(tenths(random, 1, 90_000)));
        Settings none = new Settings(Optional.empty(), Optional.empty(), Optional.empty());
        Settings settings =
                new Settings(maybe(random, "low"), maybe(random, "off"), maybe(random, "swift"));
        return some(
                random,
                List.of(
                        new WorkloadNeed(
                                "sunken-lanes",
                                maybe(random, frames),
                                maybe(random, frames),
                                1 + random.nextInt(5),
                                settings),
                        new WorkloadNeed(
                                "vault-drawing",
                                maybe(random, task),
                                maybe(random, task),
                                1 + random.nextInt(5),
                                none),
                        new WorkloadNeed("map-room", Optional.empty(), Optional.empty(), 3, none)));
    }

    private static Brief.Looks looks(Random random) {
        Optional<Colour> colour = maybe(random, pick(random, List.of(Colour.values())));
        Brief.Strength strength = random.nextBoolean() ? Brief.Strength.MUST : Brief.Strength.WISH;
        return new Brief.Looks(
                pick(random, List.of(Brief.LightingNeed.values())),
                colour,
                colour.isPresent() ? strength : Brief.Strength.NONE,
                maybe(random, pick(random, List.of(SidePanel.values()))));
    }

    private static Brief.Wireless wireless(Random random) {
        return new Brief.Wireless(
                pick(random, List.of(Brief.Strength.values())),
                pick(random, List.of(WirelessStandard.values())));
    }

    private static Brief.SizeNeed size(Random random) {
        return new Brief.SizeNeed(
                maybeInt(random, 10, 5_000),
                maybe(random, Length.mm(60 + random.nextInt(900))),
                maybe(random, Length.mm(60 + random.nextInt(900))),
                maybe(random, Length.mm(60 + random.nextInt(900))),
                maybe(random, Mass.g(1_000 + random.nextInt(90_000))));
    }

    private static List<Kept> keep(Random random) {
        List<Kept> keep = new ArrayList<>();
        for (Slot slot : some(random, List.of(Slot.values()))) {
            keep.add(new Kept(slot, part(random, slot), 1 + random.nextInt(4)));
        }
        return keep;
    }

    /** A part of the catalogue, or the same part as somebody would describe it. */
    private static Part part(Random random, Slot slot) {
        Part part = CATALOGUE.parts(slot.kind()).get(0);
        return random.nextBoolean() ? part : described(slot, part);
    }

    private static Part described(Slot slot, Part part) {
        StringBuilder text = new StringBuilder(BriefText.LEAST + "keep:\n  - slot: ");
        text.append(slot.word()).append("\n    part: owned\n    spec:\n");
        PartCells.of(part)
                .forEach(
                        (column, cell) ->
                                text.append("      ")
                                        .append(column)
                                        .append(": '")
                                        .append(cell)
                                        .append("'\n"));
        try {
            return readBrief(text.toString()).keep().get(0).part();
        } catch (BadInput bad) {
            throw new IllegalStateException(bad);
        }
    }

    private static Wishes wishes(Random random) {
        Map<String, Integer> weights = new LinkedHashMap<>();
        for (String goal :
                some(
                        random,
                        List.of(
                                "workloads",
                                "value",
                                "quiet",
                                "upgrade-room",
                                "look",
                                "energy",
                                "lifetime",
                                "simple-order"))) {
            weights.put(goal, 1 + random.nextInt(5));
        }
        return new Wishes(weights);
    }

    private static BuildRecord build(Random random) {
        Optional<Brief> brief = maybe(random, brief(random));
        int machines = brief.map(Brief::quantity).orElse(1);
        List<BuildLine> lines = new ArrayList<>();
        for (Slot slot : some(random, List.of(Slot.values()))) {
            BuildLine line =
                    new BuildLine(
                            slot,
                            part(random, slot),
                            1 + random.nextInt(16),
                            maybe(random, "millrace"),
                            money(random, 0),
                            pick(random, List.of(PartState.values())),
                            random.nextBoolean());
            int units = line.pieces() * machines;
            lines.add(random.nextBoolean() ? line : line.with(units(random, units)));
        }
        return new BuildRecord(
                brief,
                maybe(random, "balanced"),
                "Stock: of 1e3 # parts",
                CATALOGUE.digest(),
                lines,
                some(random, List.of(Slot.values())).stream()
                        .map(slot -> aside(random, slot))
                        .toList(),
                some(random, List.of(Slot.values())).stream()
                        .map(slot -> random.nextBoolean() ? move(random, slot) : swap(random, slot))
                        .toList());
    }

    /** So many units in groups, with returned ones beside them. */
    private static List<Units> units(Random random, int live) {
        List<Units> groups = new ArrayList<>();
        int left = live;
        while (left > 0) {
            PartState state = pick(random, List.of(PartState.values()));
            int count = 1 + random.nextInt(left);
            groups.add(
                    new Units(
                            count,
                            state,
                            maybe(random, date(random)),
                            maybe(random, "millrace"),
                            maybe(random, money(random, 0)),
                            maybe(random, money(random, 0))));
            left -= state == PartState.RETURNED ? 0 : count;
        }
        return groups;
    }

    private static SetAside aside(Random random, Slot slot) {
        return new SetAside(
                slot,
                "withdrawn-" + random.nextInt(99),
                "Maker: \"gone\" #" + random.nextInt(99),
                maybe(random, "supplier-of-old"),
                money(random, 0),
                random.nextBoolean(),
                units(random, 1 + random.nextInt(9)));
    }

    private static HistoryEntry move(Random random, Slot slot) {
        return new HistoryEntry.Move(
                date(random),
                maybe(random, "Ida: #1"),
                slot,
                "tarn-6",
                1 + random.nextInt(99),
                pick(random, List.of(PartState.values())),
                pick(random, List.of(PartState.values())),
                maybe(random, "millrace"),
                maybe(random, money(random, 0)),
                maybe(random, money(random, 0)),
                maybe(random, "two slots dead, \"really\""));
    }

    private static HistoryEntry swap(Random random, Slot slot) {
        return new HistoryEntry.Swap(
                date(random),
                maybe(random, "no"),
                slot,
                Optional.of("tarn-5"),
                maybe(random, "tarn-6"),
                maybe(random, "sold out"));
    }

    private static LocalDate date(Random random) {
        return LocalDate.of(2026, 1, 1).plusDays(random.nextInt(900));
    }

    private static Money money(Random random, int least) {
        return Money.ofMinor(least + random.nextInt(9_999_999), CATALOGUE.currency());
    }

    private static double tenths(Random random, int least, int most) {
        return (least + random.nextInt(most - least + 1)) / 10.0;
    }

    private static OptionalInt maybeInt(Random random, int least, int most) {
        return random.nextBoolean()
                ? OptionalInt.of(least + random.nextInt(most - least + 1))
                : OptionalInt.empty();
    }

    private static <T> Optional<T> maybe(Random random, T value) {
        return random.nextBoolean() ? Optional.of(value) : Optional.empty();
    }

    private static <T> T pick(Random random, List<T> values) {
        return values.get(random.nextInt(values.size()));
    }

    private static <T> List<T> some(Random random, List<T> values) {
        return values.stream().filter(value -> random.nextInt(3) > 0).toList();
    }
}
