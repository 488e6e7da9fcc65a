package rigbrief.assembly;

import java.util.ArrayList;
import java.util.List;
import rigbrief.build.Build;
import rigbrief.part.Slot;

/**
 * Something to have at hand.
 *
 * @param name what it is
 * @param use what it is for
 */
public record Tool(String name, String use) {
    /** The tools for a build. */
    static List<Tool> of(Bench bench, List<DriveHome> drives) {
        Build build = bench.build();
        List<Tool> tools = new ArrayList<>();
        tools.add(new Tool("cross-head screwdriver, size 2, long, magnetic", "nearly every screw"));
        if (drives.stream().anyMatch(home -> home.place() == DriveHome.Place.M2)) {
            tools.add(
                    new Tool(
                            "cross-head screwdriver, size 0 or 1",
                            "the small screws of M.2 drives"));
        }
        tools.add(new Tool("anti-static wrist strap", "static"));
        tools.add(new Tool("tape measure or ruler in mm", "the tight spots of this plan"));
        tools.add(new Tool("lamp or torch", "pins, sockets and small print on the board"));
        tools.add(new Tool("side cutters, hook-and-loop or cable ties", "tidy leads"));
        tools.add(new Tool("bowl for screws", "none left in the case"));
        if (build.has(Slot.COOLER)) {
            tools.add(new Tool("paper towel and isopropyl alcohol", "wiping paste off"));
        }
        boolean update = FirmwareStep.of(bench.it()).isPresent();
        tools.add(
                new Tool(
                        update ? "two USB sticks of 8 GB or more" : "USB stick of 8 GB or more",
                        update
                                ? "the board's firmware; installing the operating system"
                                : "installing the operating system"));
        tools.add(new Tool("keyboard, mouse, screen with its cable", "the first start"));
        tools.add(new Tool("plug-in power meter, if there is one", "the draw at the wall"));
        return List.copyOf(tools);
    }
}
