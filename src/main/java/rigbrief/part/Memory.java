package rigbrief.part;

import rigbrief.quantity.Length;

/**
 * A memory kit: one or more like modules in one box.
 *
 * @param listing identity, look and guarantee, as in every part
 * @param type memory generation
 * @param form module form
 * @param modules modules in the box
 * @param moduleGb capacity of one module in GB
 * @param mts rate in MT/s
 * @param cas CAS latency in clocks
 * @param ranks ranks of one module
 * @param height height of a module
 * @param ecc whether it corrects errors
 */
public record Memory(
        Listing listing,
        MemoryType type,
        ModuleForm form,
        int modules,
        int moduleGb,
        int mts,
        int cas,
        int ranks,
        Fact<Length> height,
        boolean ecc)
        implements Part {
    static Memory from(Listing listing, Cells cells) {
        return new Memory(
                listing,
                cells.choice("type", MemoryType.class),
                cells.choiceOr("form", ModuleForm.UDIMM),
                cells.whole("modules", 1, 8),
                cells.whole("module_gb", 1, 512),
                cells.whole("mts", 800, 20_000),
                cells.whole("cas", 5, 100),
                cells.wholeOr("ranks", 1, 8, 1),
                cells.length("height_mm", 18, 90),
                cells.yes("ecc"));
    }

    @Override
    public Kind kind() {
        return Kind.MEMORY;
    }

    /** Capacity of the kit in GB. */
    public int kitGb() {
        return modules * moduleGb;
    }
}
