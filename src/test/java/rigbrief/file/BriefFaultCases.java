package rigbrief.file;

import static rigbrief.file.FaultCase.of;

import java.util.stream.Stream;

/** What can be wrong with one value of a brief. */
final class BriefFaultCases {
    private BriefFaultCases() {}

    static Stream<FaultCase> values() {
        return Stream.of(
                value(
                        "ceiling: 5400",
                        "ceiling: »-5",
                        "ceiling: found \"-5\", expected an amount above 0, at most 100000000; write"
                                + " it in EUR, such as 1900"),
                value(
                        "ceiling: 5400",
                        "ceiling: »5,400",
                        "ceiling: found \"5,400\", expected an amount above 0, at most 100000000;"
                                + " write a decimal point, 5.400"),
                value(
                        "ceiling: 5400",
                        "ceiling: »5400.005",
                        "ceiling: found \"5400.005\", expected at most 2 decimals, as EUR has; round"
                                + " it to 5400.01"),
                value(
                        "currency: EUR",
                        "currency: »SEK",
                        "currency: found \"SEK\", expected EUR, the catalogue's currency; convert"
                                + " every amount, then write EUR"),
                value(
                        "quantity: 3",
                        "quantity: »0",
                        "quantity: found \"0\", expected a whole number from 1 to 10000; correct the"
                                + " figure, or leave the key out if unknown"),
                value(
                        "overrun: 2.5%",
                        "overrun: »2.5",
                        "overrun: found \"2.5\", expected a percentage from 0% to 50%; write it with"
                                + " its sign, such as 80%"),
                value(
                        "confidence: 90%",
                        "confidence: »100%",
                        "confidence: found \"100%\", expected a percentage from 50% to 99%, at most"
                                + " two decimals; write it with its sign, such as 80%"),
                value(
                        "resolution: 3440x1440",
                        "resolution: »wide",
                        "display.resolution: found \"wide\", expected pixels across and down; write"
                                + " 2560x1440"),
                value(
                        "[dp1.4,",
                        "[»dp9,",
                        "display.inputs[0]: found \"dp9\", expected an output standard and how many;"
                                + " write dp1.4:3 or hdmi2.1:1, with ; between several"),
                value(
                        "average: 72",
                        "average: »72 fps",
                        "workloads[0].must.average: found \"72 fps\", expected a number from 1 to"
                                + " 2000; write digits alone"),
                value(
                        "finish-within: 1.5m",
                        "finish-within: »90",
                        "workloads[1].wish.finish-within: found \"90\", expected a duration above 0"
                                + " and at most 1000h; write 90s, 1.5m or 2h"),
                value(
                        "weight: 4",
                        "weight: »6",
                        "workloads[0].wish.weight: found \"6\", expected a whole number from 1 to 5;"
                                + " correct the figure, or leave the key out if unknown"),
                value(
                        "must: 38",
                        "must: »0.5",
                        "noise.must: found \"0.5\", expected a whole number from 10 to 80; correct"
                                + " the figure, or leave the key out if unknown"),
                value(
                        "height-mm: 500",
                        "height-mm: »50cm",
                        "size.height-mm: found \"50cm\", expected a whole number of millimetres from"
                                + " 60 to 1000; write 500, or leave the key out if unknown"),
                value(
                        "at-most-litres: 45.5",
                        "at-most-litres: »45.55",
                        "size.at-most-litres: found \"45.55\", expected litres from 1 to 500, at"
                                + " most 1 decimals; correct the figure"),
                value(
                        "ecc: no",
                        "ecc: »perhaps",
                        "memory.ecc: found \"perhaps\", expected yes or no; write yes or no"),
                value(
                        "mains-v: 115",
                        "mains-v: »220",
                        "place.mains-v: found \"220\", expected one of 115, 230; write the nearer of"
                                + " the two"),
                value(
                        "quiet: 2",
                        "quiet: »9",
                        "wishes.quiet: found \"9\", expected a whole number from 0 to 5; correct the"
                                + " figure, or leave the key out if unknown"),
                value(
                        "watts: 650",
                        "watts: »65",
                        "keep[1].spec.watts: found \"65\", expected a whole number of watts from 100"
                                + " to 3000; correct the figure"));
    }

    static Stream<FaultCase> names() {
        return Stream.of(
                value(
                        "use: sunken-lanes",
                        "use: »sunken-lane",
                        "workloads[0].use: found \"sunken-lane\", expected a workload of the"
                                + " catalogue: sunken-lanes, vault-drawing, map-room; did you mean"
                                + " sunken-lanes?"),
                value(
                        "preset: high",
                        "preset: »hihg",
                        "workloads[0].with.preset: found \"hihg\", expected a preset of"
                                + " sunken-lanes: low, high; did you mean high?"),
                value(
                        "rays: full",
                        "rays: »most",
                        "workloads[0].with.rays: found \"most\", expected a ray step of"
                                + " sunken-lanes: off, full; use one of these"),
                value(
                        "upscaling: quality",
                        "upscaling: »balanced",
                        "workloads[0].with.upscaling: found \"balanced\", expected an upscaling step"
                                + " of sunken-lanes: quality, swift; use one of these"),
                value(
                        "at-once: [vault-drawing",
                        "at-once: [»vault-drawings",
                        "at-once[0]: found \"vault-drawings\", expected a workload of the catalogue:"
                                + " sunken-lanes, vault-drawing, map-room; did you mean"
                                + " vault-drawing?"),
                value(
                        "lighting: none",
                        "lighting: »dim",
                        "looks.lighting: found \"dim\", expected one of none, switchable, any; use"
                                + " one of these words"),
                value(
                        "colour: white",
                        "colour: »whitte",
                        "looks.colour: found \"whitte\", expected a word that is known here; did you"
                                + " mean white?"),
                value(
                        "side: solid",
                        "side: »glass",
                        "looks.side: found \"glass\", expected one of solid, tinted, clear; use one"
                                + " of these words"),
                value(
                        "[usb-c,",
                        "[»usbc,",
                        "front-ports[0]: found \"usbc\", expected one of usb2, usb3, usb-c, audio;"
                                + " did you mean usb2?"),
                value(
                        "slot: case",
                        "slot: »tower",
                        "keep[0].slot: found \"tower\", expected a word that is known here; use one"
                                + " of processor, board, memory, graphics, drive, second-drive,"
                                + " supply, cooler, case, fans, wireless, brace, cables, system,"
                                + " display"),
                value(
                        "part: barn-m ",
                        "part: »barn-n ",
                        "keep[0].part: found \"barn-n\", expected the id of a case in the catalogue:"
                                + " barn-m; did you mean barn-m?"),
                value(
                        "part: barn-m ",
                        "part: »tarn-6 ",
                        "keep[0].part: found \"tarn-6\", expected a part of kind case, and this is a"
                                + " processor; correct the slot or the part"),
                value(
                        "makers: [Gill]",
                        "makers: [»gill]",
                        "avoid.makers[0]: found \"gill\", expected the name of a maker as the"
                                + " catalogue has it; did you mean Gill?"),
                value(
                        "parts: [gill-8]",
                        "parts: [»gill-9]",
                        "avoid.parts[0]: found \"gill-9\", expected the id of a part in the"
                                + " catalogue; did you mean gill-8?"),
                value(
                        "suppliers: [millrace]",
                        "suppliers: [»milrace]",
                        "buying.suppliers[0]: found \"milrace\", expected a supplier of the"
                                + " catalogue: dovecote, millrace; did you mean millrace?"),
                value(
                        "need: must",
                        "need: »shall",
                        "wireless.need: found \"shall\", expected one of must, wish, none; use one"
                                + " of these words"),
                value(
                        "quantity: 3",
                        "»quantitiy: 3",
                        "quantitiy: found \"quantitiy\", expected a key that is known here; did you"
                                + " mean quantity?"),
                value(
                        "refresh: 100",
                        "refresh: 100, »refrehs: 90",
                        "display.refrehs: found \"refrehs\", expected a key that is known under"
                                + " display; did you mean refresh?"),
                value(
                        "watts: 650",
                        "watts: 650, »lenght_mm: 160",
                        "keep[1].spec.lenght_mm: found \"lenght_mm\", expected a key that is known"
                                + " under keep[1].spec; did you mean length_mm?"),
                value(
                        "quiet: 2",
                        "quiet: 2, »silence: 2",
                        "wishes.silence: found \"silence\", expected a key that is known under"
                                + " wishes; take it out"));
    }

    private static FaultCase value(String from, String to, String fault) {
        return of("brief.yaml", from, to, fault);
    }
}
