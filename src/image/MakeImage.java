import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Makes the program with a Java of its own: a folder to be unpacked anywhere, and an installer of the system it runs on (.deb, .msi,
 * .dmg). It is run by the Java that goes into the image, 25 or newer: {@code java MakeImage.java JAR VERSION SOURCES TARGET}.
 */
public final class MakeImage {
    private static final String NAME = "runthrough";
    private static final String MAIN = "runthrough.cli.Main";
    private static final String MODULES =
            "java.base,java.desktop,java.logging,java.management,java.naming,jdk.unsupported";

    private final Path jar;
    private final String version;
    private final Path sources;
    private final Path target;
    private final Path image;
    private final Systems system;

    private MakeImage(Path jar, String version, Path sources, Path target) {
        this.jar = jar;
        this.version = version;
        this.sources = sources;
        this.target = target;
        this.system = Systems.present();
        this.image = target.resolve(system == Systems.MAC ? NAME + ".app" : NAME);
    }

    /** What differs from one system to the next. */
    private enum Systems {
        LINUX("deb", "lib/app", "lib/runtime", ""),
        WINDOWS("msi", "app", "runtime", ".exe"),
        MAC("dmg", "Contents/app", "Contents/runtime/Contents/Home", "");

        private final String installer;
        private final String app;
        private final String runtime;
        private final String suffix;

        Systems(String installer, String app, String runtime, String suffix) {
            this.installer = installer;
            this.app = app;
            this.runtime = runtime;
            this.suffix = suffix;
        }

        static Systems present() {
            String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
            return name.contains("win") ? WINDOWS : name.contains("mac") ? MAC : LINUX;
        }
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        if (Runtime.version().feature() < 25) {
            throw new IllegalStateException("this is Java " + Runtime.version().feature()
                    + "; the image needs 25 or newer. Name one with -Dimage.jdk=FOLDER.");
        }
        new MakeImage(Path.of(args[0]), args[1], Path.of(args[2]), Path.of(args[3])).make();
    }

    private void make() throws IOException, InterruptedException {
        delete(target);
        Files.createDirectories(target.resolve("input"));
        // Packed once, as a whole, it gets smaller than a jar that is packed already.
        unpacked(jar, target.resolve("input").resolve(NAME + ".jar"));
        link();
        tool("jpackage", arguments("app-image",
                "--input", target.resolve("input"),
                "--main-jar", NAME + ".jar",
                "--main-class", MAIN,
                "--runtime-image", target.resolve("runtime"),
                "--icon", icon(),
                // Without the archive, as on a processor that it does not fit, it starts as a plain jar does.
                "--java-options", "-XX:AOTCache=$APPDIR/" + NAME + ".aot",
                "--java-options", "-Xlog:disable",
                // What runs for a second is compiled once and simply, and compiled again only where it runs for long.
                "--java-options", "-XX:Tier4InvocationThreshold=50000",
                "--java-options", "-XX:Tier4MinInvocationThreshold=6000",
                "--java-options", "-XX:Tier4CompileThreshold=150000",
                "--java-options", "-XX:Tier4BackEdgeThreshold=400000"));
        share();
        train();
        pack();
    }

    private void link() {
        tool("jlink", List.of(
                "--add-modules", MODULES,
                "--output", target.resolve("runtime").toString(),
                // No window is opened and no sound is made: without these the program needs the C library alone.
                "--exclude-files", "**libawt_xawt.so,**libsplashscreen.so,**libjsound.so,**libjawt.so",
                "--strip-debug", "--no-header-files", "--no-man-pages", "--compress", "zip-0"));
    }

    private List<String> arguments(String type, Object... more) {
        List<String> arguments = new ArrayList<>(List.of(
                "--type", type, "--name", NAME, "--app-version", version, "--dest", target.toString(),
                "--vendor", "Runthrough", "--description", "Says whether a strip line runs through its coil changes"));
        Stream.of(more).map(Object::toString).forEach(arguments::add);
        return arguments;
    }

    /** Completion, manual page, licence and the shipped lines, for people. */
    private void share() throws IOException, InterruptedException {
        Path share = Files.createDirectories(system == Systems.MAC ? image.resolve("Contents/share") : image.resolve("share"));
        Files.write(share.resolve("completion.bash"), printed("completion"));
        Files.write(share.resolve(NAME + ".1"), printed("completion", "--man"));
        Path lines = Files.createDirectories(share.resolve("scenarios"));
        try (Stream<Path> files = Files.list(sources.resolve("scenarios"))) {
            for (Path file : files.toList()) {
                Files.copy(file, lines.resolve(file.getFileName()));
            }
        }
        Files.copy(sources.resolve("LICENSE"), share.resolve("LICENSE"));
    }

    private byte[] printed(String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java(), "-cp", program(), MAIN));
        command.addAll(List.of(args));
        Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        byte[] text = process.getInputStream().readAllBytes();
        succeed(process.waitFor(), args[0]);
        return text;
    }

    /** The archive of classes, loaded and linked as a run with its report needs them. */
    private void train() throws IOException, InterruptedException {
        run(java(), "-XX:AOTCacheOutput=" + image.resolve(system.app).resolve(NAME + ".aot"), "-Xlog:disable",
                "-cp", program(), MAIN, "run", sources.resolve("scenarios/tube-line.yaml").toString(),
                "--out", target.resolve("trained").toString());
        delete(target.resolve("trained"));
    }

    /** One file to be unpacked, one to be installed. */
    private void pack() throws IOException, InterruptedException {
        Path packed = target.resolve(NAME + "-" + version + "-" + system.name().toLowerCase(Locale.ROOT) + "-"
                + System.getProperty("os.arch") + ".tar.gz");
        Process tar = new ProcessBuilder("tar", "-cf", "-", "-C", target.toString(), image.getFileName().toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try (InputStream in = tar.getInputStream(); OutputStream out = new SmallestGzip(Files.newOutputStream(packed))) {
            in.transferTo(out);
        }
        succeed(tar.waitFor(), "tar");
        if (system == Systems.LINUX) {
            packDebian();
        } else {
            tool("jpackage", arguments(system.installer, "--app-image", image));
        }
        delete(target.resolve("input"));
        delete(target.resolve("runtime"));
    }

    /** With the best compression that there is. */
    private static final class SmallestGzip extends GZIPOutputStream {
        SmallestGzip(OutputStream out) throws IOException {
            super(out, 1 << 16);
            def.setLevel(Deflater.BEST_COMPRESSION);
        }
    }

    /**
     * The Debian package, by dpkg-deb: jpackage gives files the date of the packing, and the archive of classes is held against the
     * date of the jar.
     */
    private void packDebian() throws IOException, InterruptedException {
        String architecture = System.getProperty("os.arch").equals("aarch64") ? "arm64" : System.getProperty("os.arch");
        Path root = target.resolve("debian");
        Files.createDirectories(root.resolve("DEBIAN"));
        Files.createDirectories(root.resolve("opt"));
        Files.writeString(root.resolve("DEBIAN/control"), """
                Package: %s
                Version: %s
                Section: science
                Priority: optional
                Architecture: %s
                Depends: libc6
                Maintainer: Runthrough <runthrough@localhost>
                Description: Says whether a strip line runs through its coil changes
                 Simulates the coil changes of a strip line and states whether the process runs through them.
                """.formatted(NAME, version, architecture));
        link(root, "usr/bin/" + NAME, "bin/" + NAME);
        link(root, "usr/share/bash-completion/completions/" + NAME, "share/completion.bash");
        link(root, "usr/share/man/man1/" + NAME + ".1", "share/" + NAME + ".1");
        Path installed = root.resolve("opt").resolve(NAME);
        Files.move(image, installed);
        String name = NAME + "_" + version + "_" + architecture + ".deb";
        // Under another name until it is whole.
        Path packing = target.resolve(name + ".part");
        run("dpkg-deb", "--root-owner-group", "--build", root.toString(), packing.toString());
        Files.move(packing, target.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        Files.move(installed, image);
        delete(root);
    }

    private static void link(Path root, String at, String to) throws IOException {
        Path link = root.resolve(at);
        Files.createDirectories(link.getParent());
        Files.createSymbolicLink(link, Path.of("/opt", NAME).resolve(to));
    }

    private String java() {
        return image.resolve(system.runtime).resolve("bin").resolve("java" + system.suffix).toString();
    }

    private String program() {
        return image.resolve(system.app).resolve(NAME + ".jar").toString();
    }

    /** The drawing as the system wants it; .ico and .icns are envelopes around a PNG. */
    private Path icon() throws IOException {
        Path drawn = sources.resolve("src/image/" + NAME + ".png");
        byte[] png = Files.readAllBytes(drawn);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(bytes);
        switch (system) {
            case LINUX -> {
                return drawn;
            }
            case WINDOWS -> {
                // One picture of 256 x 256 (0 stands for 256), 1 plane of 32 bits, behind 22 bytes; numbers lowest byte first.
                data.write(new byte[] {0, 0, 1, 0, 1, 0, 0, 0, 0, 0, 1, 0, 32, 0});
                data.writeInt(Integer.reverseBytes(png.length));
                data.writeInt(Integer.reverseBytes(22));
            }
            case MAC -> {
                data.writeBytes("icns");
                data.writeInt(png.length + 16);
                data.writeBytes("ic08");
                data.writeInt(png.length + 8);
            }
        }
        data.write(png);
        Path made = target.resolve(NAME + (system == Systems.MAC ? ".icns" : ".ico"));
        return Files.write(made, bytes.toByteArray());
    }

    /** The same jar without compression. Its date is that of the build, which the archive of classes is held against. */
    private static void unpacked(Path from, Path to) throws IOException {
        try (ZipFile zip = new ZipFile(from.toFile()); OutputStream file = Files.newOutputStream(to);
                ZipOutputStream out = new ZipOutputStream(file)) {
            for (ZipEntry entry : zip.stream().map(ZipEntry.class::cast).toList()) {
                try (InputStream in = zip.getInputStream(entry)) {
                    byte[] content = in.readAllBytes();
                    CRC32 sum = new CRC32();
                    sum.update(content);
                    ZipEntry stored = new ZipEntry(entry.getName());
                    stored.setMethod(ZipEntry.STORED);
                    stored.setSize(content.length);
                    stored.setCrc(sum.getValue());
                    stored.setTime(entry.getTime());
                    out.putNextEntry(stored);
                    out.write(content);
                }
            }
        }
        Files.setLastModifiedTime(to, FileTime.fromMillis(Files.getLastModifiedTime(from).toMillis() / 1000 * 1000));
    }

    private static void tool(String name, List<String> arguments) {
        ToolProvider tool = ToolProvider.findFirst(name).orElseThrow(() -> new IllegalStateException(
                "this Java has no " + name + "; name a whole one (a JDK) with -Dimage.jdk=FOLDER"));
        succeed(tool.run(System.out, System.err, arguments.toArray(String[]::new)), name);
    }

    private static void run(String... command) throws IOException, InterruptedException {
        succeed(new ProcessBuilder(command).redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT).start().waitFor(), command[0]);
    }

    private static void succeed(int code, String what) {
        if (code != 0) {
            throw new IllegalStateException(what + " failed with " + code);
        }
    }

    private static void delete(Path place) throws IOException {
        if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            try (Stream<Path> files = Files.walk(place)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
