package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.file.FolderFixture.aFolder;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigbrief.brief.Brief;
import rigbrief.brief.Kept;
import rigbrief.brief.Screen;
import rigbrief.brief.Wishes;
import rigbrief.brief.WorkloadNeed;
import rigbrief.brief.WorkloadNeed.Settings;
import rigbrief.brief.WorkloadNeed.Target;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.part.Colour;
import rigbrief.part.FrontPort;
import rigbrief.part.Plug;
import rigbrief.part.Port;
import rigbrief.part.Resolution;
import rigbrief.part.SidePanel;
import rigbrief.part.Supply;
import rigbrief.part.WirelessStandard;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;

class BriefReaderTest {
    private static Catalogue catalogue;

    @BeforeAll
    static void read(@TempDir Path folder) throws BadInput {
        catalogue = CatalogueReader.read(aFolder().write(folder));
    }

    @Test
    void every_key_reaches_its_component() throws BadInput {
        Brief brief = read(BriefText.FULL);

        assertThat(brief.client()).isEqualTo("Osier Weir");
        assertThat(brief.quantity()).isEqualTo(3);
        assertThat(brief.ceiling().plain()).isEqualTo("5400.00");
        assertThat(brief.overrunBasisPoints()).isEqualTo(250);
        assertThat(brief.confidencePercent()).isEqualTo(90);
        assertThat(brief.screen())
                .contains(
                        new Screen(
                                new Resolution(3440, 1440),
                                100,
                                10,
                                List.of(new Port("dp1.4", 1), new Port("hdmi2.0", 2)),
                                2,
                                false,
                                Optional.empty()));
        assertThat(brief.atOnce()).containsExactly("vault-drawing");
        assertThat(brief.frontPorts()).containsExactly(FrontPort.USB_C, FrontPort.USB3);
    }

    @Test
    void workloads_carry_targets_weights_and_settings() throws BadInput {
        List<WorkloadNeed> needs = read(BriefText.FULL).workloads();

        assertThat(needs)
                .containsExactly(
                        new WorkloadNeed(
                                "sunken-lanes",
                                Optional.of(frames(OptionalDouble.of(72), OptionalDouble.of(50.5))),
                                Optional.of(frames(OptionalDouble.of(100), OptionalDouble.empty())),
                                4,
                                new Settings(
                                        Optional.of("high"),
                                        Optional.of("full"),
                                        Optional.of("quality"))),
                        new WorkloadNeed(
                                "vault-drawing",
                                Optional.empty(),
                                Optional.of(
                                        new Target(
                                                OptionalDouble.empty(),
                                                OptionalDouble.empty(),
                                                OptionalDouble.of(90))),
                                2,
                                none()),
                        new WorkloadNeed(
                                "map-room", Optional.empty(), Optional.empty(), 3, none()));
    }

    @Test
    void limits_and_terms_are_in_the_units_of_their_components() throws BadInput {
        Brief brief = read(BriefText.FULL);

        assertThat(brief.looks())
                .isEqualTo(
                        new Brief.Looks(
                                Brief.LightingNeed.NONE,
                                Optional.of(Colour.WHITE),
                                Brief.Strength.MUST,
                                Optional.of(SidePanel.SOLID)));
        assertThat(brief.size())
                .isEqualTo(
                        new Brief.SizeNeed(
                                OptionalInt.of(455),
                                Optional.of(Length.mm(500)),
                                Optional.of(Length.mm(230)),
                                Optional.of(Length.mm(480)),
                                Optional.of(Mass.g(14_500))));
        // 0.305 EUR are 30.5 cents, 3050 hundredths of a cent.
        assertThat(brief.place()).isEqualTo(new Brief.Place(24, 640, 115, 6, 0.25, 3_050, true));
        assertThat(brief.headroom()).isEqualTo(new Brief.Headroom(75, 2, 8));
        assertThat(brief.fees().taxBasisPoints()).isEqualTo(1_900);
        assertThat(brief.wireless().atLeast()).isEqualTo(WirelessStandard.WIFI6);
        assertThat(brief.wishes().weights())
                .isEqualTo(Map.of("workloads", 5, "value", 3, "quiet", 2, "simple-order", 1));
    }

    @Test
    void a_kept_part_is_out_of_the_catalogue_or_as_the_brief_describes_it() throws BadInput {
        List<Kept> keep = read(BriefText.FULL).keep();

        Supply supply = (Supply) keep.get(1).part();

        assertThat(keep.get(0).part()).isSameAs(catalogue.part("barn-m").orElseThrow());
        assertThat(supply.id()).isEqualTo("owned-supply");
        assertThat(supply.watts()).isEqualTo(650);
        assertThat(supply.plugs().or(null).of(Plug.EPS8)).isEqualTo(2);
        assertThat(supply.length().stated()).isFalse();
    }

    @Test
    void three_keys_are_enough_and_the_rest_has_the_documented_defaults() throws BadInput {
        Brief brief = read(BriefText.LEAST);

        assertThat(brief.quantity()).isEqualTo(1);
        assertThat(brief.overrunBasisPoints()).isZero();
        assertThat(brief.confidencePercent()).isEqualTo(80);
        assertThat(brief.screen()).isEmpty();
        assertThat(brief.looks().lighting()).isEqualTo(Brief.LightingNeed.ANY);
        assertThat(brief.noise().seatDistanceM()).isEqualTo(0.8);
        assertThat(brief.wireless())
                .isEqualTo(new Brief.Wireless(Brief.Strength.NONE, WirelessStandard.NONE));
        assertThat(brief.storage()).isEqualTo(new Brief.StorageNeed(0, List.of(), 3));
        assertThat(brief.place()).isEqualTo(new Brief.Place(22, 0, 230, 4, 0.3, 3_000, false));
        assertThat(brief.headroom()).isEqualTo(new Brief.Headroom(80, 1, 5));
        assertThat(brief.fees().assembly().plain()).isEqualTo("0.00");
    }

    @Test
    void goals_that_wishes_do_not_name_weigh_nothing_except_the_workloads() throws BadInput {
        assertThat(read(BriefText.LEAST + "wishes: { quiet: 3 }\n").wishes())
                .isEqualTo(new Wishes(Map.of("workloads", 4, "quiet", 3)));
        assertThat(read(BriefText.LEAST).wishes())
                .isEqualTo(
                        new Wishes(
                                Map.of(
                                        "workloads", 4,
                                        "value", 2,
                                        "quiet", 2,
                                        "upgrade-room", 1,
                                        "look", 1,
                                        "energy", 1,
                                        "lifetime", 1,
                                        "simple-order", 1)));
    }

    @Test
    void a_wireless_must_without_a_standard_takes_the_oldest() throws BadInput {
        assertThat(read(BriefText.LEAST + "wireless: must\n").wireless())
                .isEqualTo(new Brief.Wireless(Brief.Strength.MUST, WirelessStandard.WIFI5));
    }

    @Test
    void json_of_the_same_shape_gives_the_same_brief() throws BadInput, IOException {
        // The converter is an independent reader of YAML and writer of JSON.
        Object tree = new ObjectMapper(new YAMLFactory()).readValue(BriefText.FULL, Object.class);
        String json = new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(tree);

        assertThat(read(json)).isEqualTo(read(BriefText.FULL));
    }

    @Test
    void words_that_yaml_takes_for_truth_values_stay_what_they_are() throws BadInput {
        Brief brief = read("client: no\ncurrency: EUR\nceiling: 1900\nsystem: none\n");

        assertThat(brief.client()).isEqualTo("no");
        assertThat(brief.system().strength()).isEqualTo(Brief.Strength.NONE);
    }

    @Test
    void truth_values_of_json_are_yes_and_no() throws BadInput {
        String json = "{\"client\": \"x\", \"currency\": \"EUR\", \"ceiling\": 900.50,";

        assertThat(read(json + " \"memory\": {\"ecc\": true}}").memory().ecc()).isTrue();
        assertThat(read(json + " \"memory\": {\"ecc\": false}}").memory().ecc()).isFalse();
    }

    @Test
    void a_brief_is_called_as_its_file_without_the_ending(@TempDir Path folder)
            throws BadInput, IOException {
        Path file = Files.writeString(folder.resolve("weir.v2.yaml"), BriefText.LEAST);

        assertThat(BriefReader.read(file, catalogue).name()).isEqualTo("weir.v2");
        assertThat(read(BriefText.LEAST).name()).isEqualTo("brief");
    }

    private static Target frames(OptionalDouble average, OptionalDouble low) {
        return new Target(average, low, OptionalDouble.empty());
    }

    private static Settings none() {
        return new Settings(Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Brief read(String text) throws BadInput {
        var in = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
        return BriefReader.read(in, "-", catalogue);
    }
}
