package rigbrief.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;

/** What a run was measured on: without it no figure says anything. */
final class Machine {
    private static final double GIB = 1L << 30;
    private static final Path PROCESSORS = Path.of("/proc/cpuinfo");

    private Machine() {}

    static void table(Path out) throws IOException {
        OperatingSystemMXBean system =
                ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        Table table = new Table("machine", "what", "is");
        table.row("cores", system.getAvailableProcessors());
        table.row("processor", processor());
        table.row("memory, GiB", system.getTotalMemorySize() / GIB);
        table.row("Java", System.getProperty("java.vm.name") + " " + Runtime.version());
        table.row("system", system.getName() + " " + system.getArch());
        table.row("load average at the start", system.getSystemLoadAverage());
        table.remark(
                "A load average above the number of cores means that wall times tell little and processor times are somewhat too long.");
        table.write(out);
    }

    private static String processor() throws IOException {
        if (!Files.isReadable(PROCESSORS)) {
            return "not known";
        }
        return Files.readAllLines(PROCESSORS).stream()
                .filter(line -> line.startsWith("model name"))
                .map(line -> line.substring(line.indexOf(':') + 1).strip())
                .findFirst()
                .orElse("not known");
    }
}
