package rigbrief.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** A catalogue folder without a fault, one row of each kind, to be changed and written. */
final class FolderFixture {
    private static final String COMMON =
            "id,maker,model,maker_number,gtin,colour,lighting,mass_g,warranty_years,";

    private final Map<String, String> texts = new LinkedHashMap<>();

    private FolderFixture() {
        texts.put("catalog.yaml", CATALOG);
        texts.put("processor.csv", COMMON + PROCESSOR);
        texts.put("board.csv", COMMON + BOARD);
        texts.put("memory.csv", COMMON + MEMORY);
        texts.put("graphics.csv", COMMON + GRAPHICS);
        texts.put("drive.csv", COMMON + DRIVE);
        texts.put("supply.csv", COMMON + SUPPLY);
        texts.put("cooler.csv", COMMON + COOLER);
        texts.put("case.csv", COMMON + CASE);
        texts.put("fan.csv", COMMON + FAN);
        texts.put("wireless.csv", COMMON + WIRELESS);
        texts.put("brace.csv", COMMON + BRACE);
        texts.put("cables.csv", COMMON + CABLES);
        texts.put("system.csv", COMMON + SYSTEM);
        texts.put("display.csv", COMMON + DISPLAY);
        texts.put("offers.csv", OFFERS);
        texts.put("workloads.yaml", WORKLOADS);
    }

    static FolderFixture aFolder() {
        return new FolderFixture();
    }

    /** The text of a file. */
    String text(String name) {
        return texts.get(name);
    }

    /** Every file in the order in which it was put in. */
    Map<String, String> texts() {
        return texts;
    }

    FolderFixture with(String name, String text) {
        texts.put(name, text);
        return this;
    }

    FolderFixture without(String name) {
        texts.remove(name);
        return this;
    }

    /** Replaces a text that stands in the file once. */
    FolderFixture replace(String name, String from, String to) {
        texts.put(name, replaceOnce(texts.get(name), from, to));
        return this;
    }

    static String replaceOnce(String text, String from, String to) {
        int at = text.indexOf(from);
        if (at < 0 || text.indexOf(from, at + 1) >= 0) {
            throw new IllegalArgumentException("\"%s\" does not stand there once".formatted(from));
        }
        return text.replace(from, to);
    }

    /** Line and column, from 1, at which a text begins that stands there once. */
    static String place(String text, String needle) {
        replaceOnce(text, needle, needle);
        return place(text, text.indexOf(needle));
    }

    /** Line and column, from 1, of an index. */
    static String place(String text, int index) {
        String before = text.substring(0, index);
        long line = 1 + before.chars().filter(c -> c == '\n').count();
        int column = before.length() - before.lastIndexOf('\n');
        return line + ":" + column;
    }

    Path write(Path folder) {
        texts.forEach((name, text) -> write(folder.resolve(name), text));
        return folder;
    }

    private static void write(Path file, String text) {
        try {
            Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final String CATALOG =
            """
            name: Small Stock
            currency: EUR
            as-of: 2026-11-20
            reference: { inlet-c: 24, card-c: 74, card-limit-c: 83, stale-days: 40 }
            suppliers:
              - { id: dovecote, name: Dovecote Components, delivery: 4.90 }
              - { id: millrace, name: Millrace Counter, delivery: 0 }
            """;

    private static final String PROCESSOR =
            """
            socket,family,performance_cores,efficiency_cores,threads,base_ghz,boost_ghz,rate_single,rate_all,base_power_w,sustained_power_w,limit_c,memory,memory_max_gb,pcie_gen,pcie_lanes,integrated_graphics_tflops,boxed_cooler_w,boxed_cooler_dba,features
            tarn-6,Tarn,Six,T-6,6291041500213,,none,60,3,sq7,heron,6,4,16,3.7,4.9,101,640,65,88,95,ddr5@5600;ddr4@3200,128,5,24,0.6,70,41,tpm2;secure-boot
            """;

    private static final String BOARD =
            """
            socket,families,shipped_firmware,firmware_without_processor,form_factor,memory_type,memory_form,memory_slots,memory_max_gb,memory_max_mts,processor_power_w,processor_connectors,slots,m2,shares,sata_ports,lan_gbps,wireless,front_usb,fan_headers,fan_header_ma,lighting_headers,outputs,features
            fell-b,Fell,Board B,,,black,switchable,900,4,sq7,heron@1.20;crane@1.05,1.31,yes,micro-atx,ddr5,udimm,4,192,2:6000;4:4800,150,eps8:1;eps4:1,x16:gen5:1;x1:gen3:3,2280:gen5x4;22110:gen4x4|sata;2230:key-e,"m2-2 takes sata-3,sata-4;m2-1 takes slot-3",4,2.5,wifi6e,usb2:2;usb3:1;usb-c:1,5,1000,2,dp1.4;hdmi2.1:2,tpm2
            """;

    private static final String MEMORY =
            """
            type,form,modules,module_gb,mts,cas,ranks,height_mm,ecc
            rill-32,Rill,Quiet 32,,,black,none,80,10,ddr5,udimm,2,16,5600,36,2,33,no
            """;

    private static final String GRAPHICS =
            """
            tflops,bandwidth_gbs,vram_gb,ray_rate,upscaling,length_mm,height_mm,slots,board_power_w,peak_factor,connectors,outputs,pcie,load_dba,idle_dba
            gill-8,Gill,Eight,,,white,fixed,1250,3,21.5,448,12,95,second,286,128,2.7,215,1.7,8pin:2,dp1.4:3;hdmi2.1:1,gen4x16,34.5,0
            """;

    private static final String DRIVE =
            """
            form,interface,capacity_gb,read_mbs,write_mbs,endurance_tbw,cache,dba
            mere-1t,Mere,One,,,,none,8,5,m2-2280,gen4x4,1000,7000,6200,600,dram,0
            """;

    private static final String SUPPLY =
            """
            form,length_mm,watts,efficiency,guide,connectors,modular,dba_20,dba_50,dba_100
            weir-750,Weir,Steady 750,,,black,none,1700,10,atx,160,750,gold,atx3.1,atx24:1;eps8:2;8pin:3;12v2x6:1;sata:6;4pin:2,full,0,18.5,31
            """;

    private static final String COOLER =
            """
            type,sockets,height_mm,radiator_mm,thickness_mm,resistance_kw,rated_heat_w,memory_clearance_mm,fan_raise_mm,fan_size_mm,fans,max_rpm,max_dba
            scar-t,Scar,Tower,,,black,none,780,6,air,sq7;sq6,158,,,0.21,180,42,20,120,1,1700,29.4
            """;

    private static final String CASE =
            """
            boards,graphics_length_mm,graphics_height_mm,expansion_slots,cooler_height_mm,supplies,supply_length_mm,supply_length_with_cage_mm,positions,included_fans,included_fan_m3h,included_fan_pa,included_fan_dba,radiators,bays_35,bays_25,front_usb,side,damping_db,impedance,width_mm,height_mm,depth_mm,card_bracket
            barn-m,Barn,Middle,,,black,none,7200,2,atx;micro-atx;mini-itx,365,175,7,168,atx,220,180,front:3x120|2x140;rear:1x120,rear:1x120,85.5,14,24.5,front:360|280@60;top:240@30,2,3,usb3:2;usb-c:1;audio:1,solid,1.5,0.00045,218,470,455,yes
            """;

    private static final String FAN =
            """
            size_mm,max_rpm,flow_m3h,pressure_pa,max_dba,pack,connector,current_ma
            airt-120,Airt,Slow 120,,,black,none,150,6,120,1500,94.5,18.2,23.1,3,pwm4,90
            """;

    private static final String WIRELESS =
            """
            slot,standard
            loft-6,Loft,Six,,,,none,30,2,m2-e,wifi6
            """;

    private static final String BRACE =
            """
            max_mass_g,fits
            prop-1,Prop,One,,,grey,none,200,2,2500,floor
            """;

    private static final String CABLES =
            """
            covers
            cord-w,Cord,White,,,white,none,300,2,atx24;eps8;8pin
            """;

    private static final String SYSTEM =
            """
            requires
            sill-11,Sill,Desk,,,,,,,tpm2;secure-boot
            """;

    private static final String DISPLAY =
            """
            resolution,refresh_hz,vrr_low_hz,bits_per_colour,inputs
            pane-27,Pane,Wide 27,,,black,none,5400,3,2560x1440,165,48,10,dp1.4;hdmi2.0:2
            """;

    private static final String OFFERS =
            """
            part,supplier,price,currency,stock,lead_days,as_of
            tarn-6,millrace,189.90,EUR,12,1,2026-11-19
            tarn-6,dovecote,184.50,EUR,0,4,2026-11-18
            mere-1t,dovecote,71,EUR,30,2,2026-11-20
            """;

    private static final String WORKLOADS =
            """
            workloads:
              - id: sunken-lanes
                title: Sunken Lanes
                kind: frame-rate
                memory-gb: 10
                vram-gb: { fixed: 3.5, per-megapixel: 0.7 }
                disk-gb: 60
                fitted: { n: 12, sigma: 0.08 }
                engine-cap: 240
                work: { fixed-ms: 0.4, gflop: { fixed: 25, per-megapixel: 70 }, gbyte: { fixed: 0.4, per-megapixel: 1.2 }, rays: { fixed: 0.2, per-megapixel: 0.3 }, serial: 0.5, parallel: 1.4, memory-exponent: 0.2 }
                reference-preset: high
                presets:
                  low: { graphics: 0.5, processor: 0.75, vram: 0.6 }
                  high: { graphics: 1, processor: 1, vram: 1 }
                rays:
                  full: { rays: 1, graphics: 0.95, processor: 1.1 }
                upscaling: { quality: 0.667, swift: 0.5 }
                scenes:
                  - { name: open lane, share: 0.7, graphics: 1, processor: 1 }
                  - { name: market, share: 0.25, graphics: 1.2, processor: 1.3 }
                  - { name: flood, share: 0.05, graphics: 1.6, processor: 1.5 }
                settings:
                  - { name: puddles, visible: 2, stands-in-for-rays: yes, steps: [ { name: low, graphics: 0.02, processor: 0 }, { name: high, graphics: 0.09, processor: 0.01 } ] }
              - id: vault-drawing
                title: Vault Drawing
                kind: task-time
                job: draw one vault
                memory-gb: 14
                vram-gb: 2
                disk-gb: 18
                fitted: { n: 6, sigma: 0.1 }
                work: { serial: 900, parallel: 15000, gflop: 30000, read-gb: 3, write-gb: 1 }
              - id: map-room
                title: Map Room
                kind: capacity
                memory-gb: 4
                disk-gb: 150
                growth-gb-per-year: 80
            """;
}
