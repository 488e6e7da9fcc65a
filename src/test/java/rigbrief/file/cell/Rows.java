package rigbrief.file.cell;

import java.util.LinkedHashMap;
import java.util.Map;
import rigbrief.part.Kind;

/** A row of each kind as text by column, the id left out. */
final class Rows {
    private static final String COMMON =
            "maker=Tarn|model=Six, with a comma|maker_number=T-6|gtin=6291041500213|colour=black|"
                    + "lighting=switchable|mass_g=1250|warranty_years=3|";

    private Rows() {}

    /** Every column filled. */
    static Map<String, String> filled(Kind kind) {
        return row(COMMON + own(kind));
    }

    /** The required columns alone. */
    static Map<String, String> required(Kind kind) {
        Map<String, String> filled = filled(kind);
        for (Column column : ColumnLister.of(kind)) {
            if (!column.required()) {
                filled.remove(column.name());
            }
        }
        return filled;
    }

    private static Map<String, String> row(String text) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (String cell : text.split("[|]")) {
            int equals = cell.indexOf('=');
            cells.put(cell.substring(0, equals), cell.substring(equals + 1).replace('/', '|'));
        }
        return cells;
    }

    private static String own(Kind kind) {
        return switch (kind) {
            case PROCESSOR ->
                    "socket=sq7|family=heron|performance_cores=6|efficiency_cores=4|threads=16|"
                            + "base_ghz=3.7|boost_ghz=4.9|rate_single=101|rate_all=640|"
                            + "base_power_w=65|sustained_power_w=88|limit_c=95|"
                            + "memory=ddr5@5600;ddr4@3200|memory_max_gb=128|pcie_gen=5|"
                            + "pcie_lanes=24|integrated_graphics_tflops=0.6|boxed_cooler_w=70|"
                            + "boxed_cooler_dba=41|features=tpm2;secure-boot";
            case BOARD ->
                    "socket=sq7|families=heron@1.20;crane@1.05|shipped_firmware=1.31|"
                            + "firmware_without_processor=yes|form_factor=micro-atx|"
                            + "memory_type=ddr5|memory_form=sodimm|memory_slots=4|"
                            + "memory_max_gb=192|memory_max_mts=2:6000;4:4800|"
                            + "processor_power_w=150|processor_connectors=eps8:1;eps4:1|"
                            + "slots=x16:gen5:1;x1:gen3:3|"
                            + "m2=2280:gen5x4;22110:gen4x4/sata;2230:key-e|"
                            + "shares=m2-2 takes sata-3,sata-4;m2-1 takes slot-3;"
                            + "m2-2 takes sata-1,slot-3|sata_ports=4|lan_gbps=2.5|"
                            + "wireless=wifi6e|front_usb=usb2:2;usb3:1;usb-c:1|fan_headers=5|"
                            + "fan_header_ma=1000|lighting_headers=2|outputs=dp1.4:1;hdmi2.1:2|"
                            + "features=tpm2";
            case MEMORY ->
                    "type=ddr4|form=sodimm|modules=2|module_gb=16|mts=3200|cas=22|ranks=2|"
                            + "height_mm=33|ecc=yes";
            case GRAPHICS ->
                    "tflops=21.5|bandwidth_gbs=448|vram_gb=12|ray_rate=95|upscaling=second|"
                            + "length_mm=286|height_mm=128|slots=2.7|board_power_w=215|"
                            + "peak_factor=1.7|connectors=8pin:2;6pin:1|"
                            + "outputs=dp1.4:3;hdmi2.1:1|pcie=gen4x16|load_dba=34.5|idle_dba=12";
            case DRIVE ->
                    "form=m2-2280|interface=gen4x4|capacity_gb=1000|read_mbs=7000|"
                            + "write_mbs=6200|endurance_tbw=600|cache=dram|dba=3.5";
            case SUPPLY ->
                    "form=sfx-l|length_mm=130|watts=750|efficiency=gold|guide=atx3.1|"
                            + "connectors=atx24:1;eps8:2;12v2x6:1|modular=full|dba_20=0|"
                            + "dba_50=18.5|dba_100=31";
            case COOLER ->
                    "type=liquid|sockets=sq7;sq6|height_mm=52|radiator_mm=240|thickness_mm=27|"
                            + "resistance_kw=0.12|rated_heat_w=250|memory_clearance_mm=60|"
                            + "fan_raise_mm=20|fan_size_mm=120|fans=2|max_rpm=1900|max_dba=33.4";
            case CASE ->
                    "boards=micro-atx;atx|graphics_length_mm=365|graphics_height_mm=175|"
                            + "expansion_slots=7|cooler_height_mm=168|supplies=atx|"
                            + "supply_length_mm=220|supply_length_with_cage_mm=180|"
                            + "positions=front:3x120/2x140;rear:1x120|included_fans=rear:1x120|"
                            + "included_fan_m3h=85.5|included_fan_pa=14|included_fan_dba=24.5|"
                            + "radiators=front:360/280@60;top:240@30|bays_35=2|bays_25=3|"
                            + "front_usb=usb3:2;usb-c:1|side=tinted|damping_db=1.5|"
                            + "impedance=0.00045|width_mm=218|height_mm=470|depth_mm=455|"
                            + "card_bracket=yes";
            case FAN ->
                    "size_mm=120|max_rpm=1500|flow_m3h=94.5|pressure_pa=18.2|max_dba=23.1|pack=3|"
                            + "connector=dc3|current_ma=90";
            case WIRELESS -> "slot=m2-e|standard=wifi6";
            case BRACE -> "max_mass_g=2500|fits=slot";
            case CABLES -> "covers=atx24;eps8;8pin";
            case SYSTEM -> "requires=tpm2;secure-boot";
            case DISPLAY ->
                    "resolution=2560x1440|refresh_hz=165|vrr_low_hz=48|bits_per_colour=10|"
                            + "inputs=dp1.4:1;hdmi2.0:2";
        };
    }
}
