package runthrough.report.write;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The real disk, but that one of the operations that change or list it fails. */
final class FaultyDisk extends FileSystemProvider {
    private final FileSystemProvider real = FileSystems.getDefault().provider();
    private final FileSystem system = new Files();
    private int left = Integer.MAX_VALUE;
    private String failed = "";

    /** {@code path} on this disk. */
    Path at(Path path) {
        return wrapped(path);
    }

    /** From now on {@code operations} succeed, the next one fails, all further ones succeed. */
    void failAfter(int operations) {
        left = operations;
        failed = "";
    }

    /** What failed since then; empty when nothing did. */
    String failed() {
        return failed;
    }

    private void count(String operation) throws IOException {
        if (left-- == 0) {
            failed = operation;
            throw new IOException("the disk fails");
        }
    }

    private Path wrapped(Path path) {
        InvocationHandler handler = (proxy, method, args) -> {
            if (method.getName().equals("getFileSystem")) {
                return system;
            }
            if (method.getName().equals("equals")) {
                return args[0] instanceof Path other && path.equals(plain(other));
            }
            Object[] plain = args == null ? new Object[0] : args.clone();
            for (int i = 0; i < plain.length; i++) {
                plain[i] = plain[i] instanceof Path other ? plain(other) : plain[i];
            }
            try {
                return wrappedResult(method.invoke(path, plain));
            } catch (InvocationTargetException e) {
                throw e.getTargetException();
            }
        };
        return (Path) Proxy.newProxyInstance(Path.class.getClassLoader(), new Class<?>[] {Path.class}, handler);
    }

    private @Nullable Object wrappedResult(@Nullable Object result) {
        if (result instanceof Path path) {
            return wrapped(path);
        } else if (result instanceof Iterator<?> iterator) {
            List<Path> names = new ArrayList<>();
            iterator.forEachRemaining(name -> names.add(wrapped((Path) name)));
            return names.iterator();
        }
        return result;
    }

    private static Path plain(Path path) {
        // A path prints itself, and all of these were made of real ones.
        return Path.of(path.toString());
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        count("open");
        return real.newByteChannel(plain(path), options, attributes);
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        count("lock");
        return real.newFileChannel(plain(path), options, attributes);
    }

    @Override
    public OutputStream newOutputStream(Path path, OpenOption... options) throws IOException {
        count("open");
        return new FilterOutputStream(real.newOutputStream(plain(path), options)) {
            @Override
            public void write(byte[] bytes, int from, int number) throws IOException {
                count("write");
                out.write(bytes, from, number);
            }

            @Override
            public void close() throws IOException {
                super.close();
                count("close");
            }
        };
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        count("list");
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> all = real.newDirectoryStream(plain(folder), path -> true)) {
            for (Path path : all) {
                if (filter.accept(wrapped(path))) {
                    found.add(wrapped(path));
                }
            }
        }
        return new DirectoryStream<>() {
            @Override
            public Iterator<Path> iterator() {
                return found.iterator();
            }

            @Override
            public void close() {
                // Closed above.
            }
        };
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        count("make folder");
        real.createDirectory(plain(folder), attributes);
    }

    @Override
    public void createLink(Path link, Path existing) throws IOException {
        count("link");
        real.createLink(plain(link), plain(existing));
    }

    @Override
    public void delete(Path path) throws IOException {
        count("delete");
        real.delete(plain(path));
    }

    @Override
    public void copy(Path from, Path to, CopyOption... options) throws IOException {
        count("copy");
        real.copy(plain(from), plain(to), options);
    }

    @Override
    public void move(Path from, Path to, CopyOption... options) throws IOException {
        count("move");
        real.move(plain(from), plain(to), options);
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return real.isSameFile(plain(one), plain(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return real.isHidden(plain(path));
    }

    @Override
    public Path readSymbolicLink(Path link) throws IOException {
        return wrapped(real.readSymbolicLink(plain(link)));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return real.getFileStore(plain(path));
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        real.checkAccess(plain(path), modes);
    }

    @Override
    public <V extends FileAttributeView> @Nullable V getFileAttributeView(
            Path path, Class<V> type, LinkOption... options) {
        return real.getFileAttributeView(plain(path), type, options);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return real.readAttributes(plain(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options) throws IOException {
        return real.readAttributes(plain(path), attributes, options);
    }

    @Override
    public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
        real.setAttribute(plain(path), attribute, value, options);
    }

    @Override
    public String getScheme() {
        return "faulty";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        return system;
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException();
    }

    /** The file system of the real disk, by way of this provider. */
    private final class Files extends FileSystem {
        private final FileSystem all = FileSystems.getDefault();

        @Override
        public FileSystemProvider provider() {
            return FaultyDisk.this;
        }

        @Override
        public void close() {
            // Never.
        }

        @Override
        public boolean isOpen() {
            return true;
        }

        @Override
        public boolean isReadOnly() {
            return false;
        }

        @Override
        public String getSeparator() {
            return all.getSeparator();
        }

        @Override
        public Iterable<Path> getRootDirectories() {
            return all.getRootDirectories();
        }

        @Override
        public Iterable<FileStore> getFileStores() {
            return all.getFileStores();
        }

        @Override
        public Set<String> supportedFileAttributeViews() {
            return all.supportedFileAttributeViews();
        }

        @Override
        public Path getPath(String first, String... more) {
            return wrapped(all.getPath(first, more));
        }

        @Override
        public PathMatcher getPathMatcher(String pattern) {
            return path -> all.getPathMatcher(pattern).matches(plain(path));
        }

        @Override
        public UserPrincipalLookupService getUserPrincipalLookupService() {
            return all.getUserPrincipalLookupService();
        }

        @Override
        public WatchService newWatchService() {
            throw new UnsupportedOperationException();
        }
    }
}
