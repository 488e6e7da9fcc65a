package rigbrief.file;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 digests (FIPS 180-4), as the usual checksum programs print them. */
public final class Sha256 {
    private Sha256() {}

    /** The digest of some bytes: 64 hexadecimal digits in lower case. */
    public static String of(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException impossible) {
            // Every Java platform has it: java.security.MessageDigest requires SHA-256.
            throw new IllegalStateException(impossible);
        }
    }
}
