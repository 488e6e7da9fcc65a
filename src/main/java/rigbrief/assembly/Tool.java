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
        tools.add(new Tool(bench.say("tool.driver"), bench.say("tool.driver.use")));
        if (drives.stream().anyMatch(home -> home.place() == DriveHome.Place.M2)) {
            tools.add(new Tool(bench.say("tool.small"), bench.say("tool.small.use")));
        }
        tools.add(new Tool(bench.say("tool.strap"), bench.say("tool.strap.use")));
        tools.add(new Tool(bench.say("tool.tape"), bench.say("tool.tape.use")));
        tools.add(new Tool(bench.say("tool.lamp"), bench.say("tool.lamp.use")));
        tools.add(new Tool(bench.say("tool.cutters"), bench.say("tool.cutters.use")));
        tools.add(new Tool(bench.say("tool.bowl"), bench.say("tool.bowl.use")));
        if (build.has(Slot.COOLER)) {
            tools.add(new Tool(bench.say("tool.towel"), bench.say("tool.towel.use")));
        }
        boolean update = FirmwareStep.of(bench.it()).isPresent();
        tools.add(
                new Tool(
                        update ? bench.say("tool.sticks") : bench.say("tool.stick"),
                        update ? bench.say("tool.sticks.use") : bench.say("tool.stick.use")));
        tools.add(new Tool(bench.say("tool.desk"), bench.say("tool.desk.use")));
        tools.add(new Tool(bench.say("tool.meter"), bench.say("tool.meter.use")));
        return List.copyOf(tools);
    }
}
