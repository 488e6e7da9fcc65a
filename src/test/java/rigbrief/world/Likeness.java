package rigbrief.world;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rigbrief.part.Kind;

/**
 * How parts of a kind are like one another.
 *
 * <p>Rows that agree in the columns {@code alike} may lend each other their figures; every column
 * that is not a figure, steps of the trade such as cores, capacities and power classes among them,
 * is taken from one row as a whole. The spreads are common practice: how far sheets of rival makers
 * differ within one class of part.
 *
 * @param alike columns that must agree
 * @param figures columns that vary
 */
record Likeness(List<String> alike, List<Figure> figures) {
    private static final Map<Kind, Likeness> BY_KIND = new EnumMap<>(Kind.class);

    static {
        put(
                Kind.PROCESSOR,
                List.of("socket", "family", "performance_cores", "efficiency_cores"),
                figure("mass_g", 0, 0, 0.01),
                figure("base_ghz", 0, 0.01, 0),
                figure("boost_ghz", 0, 0.01, 0),
                figure("rate_single", 0, 0.015, 0.005),
                figure("rate_all", 0, 0.02, 0.01));
        put(
                Kind.BOARD,
                List.of("socket", "form_factor", "memory_type"),
                figure("mass_g", 0.02, 0.02, 0),
                figure("processor_power_w", 0, 0.04, 0));
        put(
                Kind.MEMORY,
                List.of("type", "form", "modules", "module_gb", "mts", "ecc"),
                figure("mass_g", 0.02, 0, 0),
                figure("height_mm", 0.04, 0, 0));
        put(
                Kind.GRAPHICS,
                List.of("vram_gb", "connectors", "upscaling"),
                figure("mass_g", 0.06, 0, 0),
                figure("tflops", 0, 0.015, 0.003),
                figure("ray_rate", 0, 0.015, 0.003),
                figure("length_mm", 0.03, 0, 0),
                figure("height_mm", 0.015, 0, 0),
                figure("board_power_w", 0, 0.015, 0),
                figure("load_dba", -0.02, 0, 0.02),
                figure("idle_dba", 0, 0, 0.03));
        put(
                Kind.DRIVE,
                List.of("form", "interface", "capacity_gb"),
                figure("mass_g", 0, 0, 0.01),
                figure("read_mbs", 0, 0.03, 0),
                figure("write_mbs", 0, 0.03, 0.02),
                figure("endurance_tbw", 0, 0.05, 0),
                figure("dba", 0, -0.02, 0.01));
        put(
                Kind.SUPPLY,
                List.of("form", "watts"),
                figure("mass_g", 0.02, 0, 0),
                figure("dba_20", 0, -0.02, 0),
                figure("dba_50", 0, -0.02, 0),
                figure("dba_100", 0, -0.02, 0));
        put(
                Kind.COOLER,
                List.of("type", "sockets", "radiator_mm", "fan_size_mm", "fans"),
                figure("mass_g", 0.06, 0, 0),
                figure("height_mm", 0.02, 0, 0),
                figure("resistance_kw", -0.05, -0.03, 0),
                figure("rated_heat_w", 0.05, 0.03, 0),
                figure("memory_clearance_mm", -0.02, 0, 0),
                figure("max_rpm", 0, 0, 0.03),
                figure("max_dba", -0.01, -0.02, 0));
        put(
                Kind.CASE,
                List.of("boards", "supplies"),
                figure("mass_g", 0.06, 0, 0),
                figure("graphics_length_mm", 0.03, 0, 0),
                figure("graphics_height_mm", 0.01, 0, 0),
                figure("cooler_height_mm", 0.01, 0, 0),
                figure("supply_length_mm", 0.02, 0, 0),
                figure("supply_length_with_cage_mm", 0.02, 0, 0),
                figure("included_fan_m3h", 0, 0.02, 0),
                figure("included_fan_pa", 0, 0.02, 0),
                figure("included_fan_dba", 0, -0.02, 0),
                figure("damping_db", 0, 0.05, 0),
                figure("impedance", 0, 0, 0.05),
                figure("width_mm", 0.01, 0, 0),
                figure("height_mm", 0.02, 0, 0),
                figure("depth_mm", 0.03, 0, 0));
        put(
                Kind.FAN,
                List.of("size_mm", "pack", "connector"),
                figure("mass_g", 0, 0, 0.02),
                figure("max_rpm", 0, 0.01, 0.01),
                figure("flow_m3h", 0, 0.03, 0),
                figure("pressure_pa", 0, 0.03, 0),
                figure("max_dba", 0, -0.03, 0.01),
                figure("current_ma", 0, 0, 0.02));
        put(Kind.WIRELESS, List.of("slot", "standard"), figure("mass_g", 0, 0, 0.02));
        put(Kind.BRACE, List.of("fits", "max_mass_g"), figure("mass_g", 0, 0, 0.02));
        put(Kind.CABLES, List.of("covers"), figure("mass_g", 0, 0, 0.02));
        put(Kind.SYSTEM, List.of("requires"));
        put(Kind.DISPLAY, List.of("resolution", "refresh_hz"), figure("mass_g", 0.03, 0, 0.01));
    }

    private static Figure figure(String column, double size, double quality, double own) {
        return new Figure(column, size, quality, own);
    }

    private static void put(Kind kind, List<String> alike, Figure... figures) {
        BY_KIND.put(kind, new Likeness(alike, List.of(figures)));
    }

    /** How parts of a kind are like one another. */
    static Likeness of(Kind kind) {
        return BY_KIND.get(kind);
    }
}
