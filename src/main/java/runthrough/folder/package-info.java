/**
 * Folders of our own on a disk that others use, too: {@link runthrough.folder.FolderLock} says whether the run that made one is still
 * at work in it; {@link runthrough.folder.TemporaryFolder} is one among the temporary files of the machine, and removes what runs that
 * were killed have left of the same kind.
 */
@NullMarked
package runthrough.folder;

import org.jspecify.annotations.NullMarked;
