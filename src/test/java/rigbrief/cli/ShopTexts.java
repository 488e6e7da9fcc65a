package rigbrief.cli;

/** What stands in the files of a {@link SmallShop}. */
final class ShopTexts {
    static final String BRIEF =
            """
            client: Wren, aged fifteen
            currency: EUR
            ceiling: 600
            overrun: 2.5%
            confidence: 80%
            display: { resolution: 1920x1080, refresh: 75, inputs: [hdmi1.4, dp1.2] }
            workloads:
              - use: brass-regatta
                must: { average: 45, low: 20 }
                wish: { average: 100, weight: 3 }
                with: { preset: high }
              - use: ledger-sheets
                must: { finish-within: 90s }
            at-once: [office-day]
            looks: { lighting: any, colour: black, side: any }
            noise: { must: 45, wish: 32, distance: 0.8 }
            wireless: { need: wish, at-least: wifi5 }
            memory: { at-least: 8 }
            storage: { at-least: 400, room-for: [brass-regatta], years: 3 }
            size: { at-most-litres: 60, at-most-kg: 20 }
            avoid: { makers: [Nobody], parts: [slatecombe-chip-500-gb] }
            buying: { suppliers: [], within-days: 30, at-most-suppliers: 4 }
            place: { room-c: 22, altitude-m: 300, hours-per-day: 4, tariff: 0.3 }
            wishes: { workloads: 3, value: 5, upgrade-room: 2, lifetime: 1, quiet: 2 }
            fees: { assembly: 20, tax: 0% }
            locale: en-GB
            """;

    static final String JSON =
            """
            {"client": "Wren", "currency": "EUR", "ceiling": 600, "locale": "de-DE",
             "workloads": [{"use": "pocket-orchard", "must": {"average": 30}, "with": {"rays": "off"}}],
             "display": {"resolution": "1920x1080", "refresh": 60},
             "memory": {"at-least": 8}, "storage": {"at-least": 400},
             "keep": [{"slot": "case", "part": "hobbinfold-deskmate-m"}],
             "wishes": {"value": 4, "energy": 1, "look": 1}, "quantity": 2}
            """;

    static final String LIST =
            """
            # what a friend wrote down
            merrowby-courante-4; hobbinfold-plain-1644m-d4
            lathmere-plainbar-1x16-d4-2666-c19 x2
            bramblecote-lane-sorrel-60, slatecombe-chip-500-gb
            wattlemarsh-fen-500
            hobbinfold-deskmate-m
            """;

    static final String MEASURED =
            """
            machine,processor,graphics,memory,memory_mts,drive,build,workload,resolution,preset,rays,upscaling,average_fps,low_fps,seconds,frame_log
            one,ostrel-twill-4,bramblecote-lane-sorrel-60,lathmere-plainbar-1x16-d4-2666-c19,2666,lathmere-slip-480-gb,,brass-regatta,1920x1080,high,,,71,50,,
            one,ostrel-twill-4,bramblecote-lane-sorrel-60,lathmere-plainbar-1x16-d4-2666-c19,2666,lathmere-slip-480-gb,,pocket-orchard,1920x1080,high,,,110,80,,
            two,merrowby-courante-4,tressadine-sortie-lampwick-360,lathmere-plainbar-1x16-d4-2666-c19,,slatecombe-chip-500-gb,,brass-regatta,1920x1080,medium,,,,,,log.csv
            two,merrowby-courante-4,tressadine-sortie-lampwick-360,lathmere-plainbar-1x16-d4-2666-c19,,slatecombe-chip-500-gb,,ledger-sheets,,,,,,,33,
            three,,,,,,build.yaml,pocket-orchard,1920x1080,high,,,95,70.5,,
            """;

    static final String SPEEDS =
            """
            workload,resolution,preset,rays,upscaling,average_fps,low_fps,seconds,frame_log
            brass-regatta,1920x1080,high,,,71.5,50,,
            brass-regatta,1920x1080,medium,,,,,,log.csv
            ledger-sheets,,,,,,,31,
            """;

    static final String LOG =
            """
            # frame times of a walk
            frame,frame_ms
            1,13.1
            2,12.9
            3,14.25
            4,22.5
            5,13
            """;

    static final String PRICES =
            """
            Price list of Quaymark
            Ref;Article;Net;Stock;Days
            lathmere-slip-480-gb;Lathmere Slip 480 GB;31,50;12;2
            wattlemarsh-fen-500;Wattlemarsh Fen 500;1.036,00;none;3 days
            galebourne-gust-120;Galebourne Gust 120;on request;4;2
            hobbinfold-deskmate-m;Hobbinfold Deskmate M;35,90;8;1
            """;

    static final String MAP =
            """
            supplier: quaymark
            encoding: utf-8
            delimiter: semicolon
            decimal: comma
            thousands: point
            currency: EUR
            skip-lines: 1
            as-of: 2026-12-01
            columns: { id: Ref, words: Article, price: Net, stock: Stock, lead-days: Days }
            stock-words: { none: 0 }
            lead-words: { 3 days: 3 }
            no-price: [on request]
            unlisted: keep
            same: { X-1: galebourne-gust-120 }
            """;

    static final String RATES =
            """
            part,tflops,bandwidth_gbs,ray_rate,rate_single,rate_all
            ostrel-twill-4,,,,71,235
            bramblecote-lane-sorrel-60,6.1,190,,,
            """;

    /** A desk for letters and one job, by nearly nothing but the usual answers. */
    static final String ANSWERS =
            """
            Fenwick and Daughters
            2
            ledger sheets, office-day
            unknown
            25s
            no

            quiet



            none
            closed


            no

            yes


            10
            2
            long life, value

            1600


            """;

    static final String KEPT_ANSWERS =
            """
            # Answers of rigbrief intake so far; it takes them up again with --resume.
            client = Fenwick and Daughters
            quantity = 2
            workloads = brass-regatta, ledger-sheets
            """;

    private ShopTexts() {}
}
