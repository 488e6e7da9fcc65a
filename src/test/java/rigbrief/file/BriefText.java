package rigbrief.file;

/**
 * A brief without a fault in which every key stands, for the catalogue of {@link FolderFixture}.
 */
final class BriefText {
    static final String FULL =
            """
            client: Osier Weir
            currency: EUR
            quantity: 3
            ceiling: 5400
            overrun: 2.5%
            confidence: 90%
            display: { resolution: 3440x1440, refresh: 100, bits: 10, inputs: [dp1.4, 'hdmi2.0:2'], count: 2, buy: no }
            workloads:
              - use: sunken-lanes
                must: { average: 72, low: 50.5 }
                wish: { average: 100, weight: 4 }
                with: { preset: high, rays: full, upscaling: quality }
              - use: vault-drawing
                wish: { finish-within: 1.5m }
                weight: 2
              - use: map-room
            at-once: [vault-drawing]
            looks: { lighting: none, colour: white, colour-must: yes, side: solid }
            noise: { must: 38, wish: 32, distance: 0.7 }
            wireless: { need: must, at-least: wifi6 }
            memory: { at-least: 32, ecc: no }
            storage: { at-least: 1000, room-for: [sunken-lanes, map-room], years: 4 }
            size: { at-most-litres: 45.5, height-mm: 500, width-mm: 230, depth-mm: 480, at-most-kg: 14.5 }
            front-ports: [usb-c, usb3]
            keep:
              - { slot: case, part: barn-m }
              - slot: supply
                part: owned
                spec: { maker: Old Weir, model: Steady 650, form: atx, watts: 650, connectors: [atx24, 'eps8:2', '8pin:2'] }
            avoid: { makers: [Gill], parts: [gill-8] }
            buying: { suppliers: [millrace], at-most-suppliers: 1, within-days: 10 }
            system: { need: wish, part: sill-11 }
            place: { room-c: 24, altitude-m: 640, mains-v: 115, hours-per-day: 6, load-share: 0.25, tariff: 0.305, helper-processor: yes }
            headroom: { supply-share: 75%, supply-sizes-up: 2, thermal-margin-k: 8 }
            wishes: { workloads: 5, value: 3, quiet: 2, few-suppliers: 1 }
            fees: { assembly: 120, tax: 19% }
            """;

    static final String LEAST = "client: Osier Weir\ncurrency: EUR\nceiling: 1900\n";

    private BriefText() {}
}
