using Microsoft.Win32.SafeHandles;

namespace PowerCheck.Api.Batches.Intake;

/// <summary>
/// Bytes put aside in a temporary file until they are taken, first in, first out. One writer and one reader. The file is used
/// in the round, so that it never grows beyond its bound. It has no name from the start, so that nothing is left behind.
/// </summary>
/// <param name="bound">Most bytes put aside at once.</param>
internal sealed class AsideFile(long bound) : IDisposable
{
    private readonly SafeFileHandle file = Nameless();

    private readonly SemaphoreSlim filled = new(0);
    private readonly SemaphoreSlim freed = new(0);
    private long written;
    private long taken;
    private volatile bool ended;

    /// <summary>Puts as many bytes aside as there is room for.</summary>
    /// <returns>How many.</returns>
    public async ValueTask<int> Write(ReadOnlyMemory<byte> bytes, CancellationToken stop)
    {
        var (at, room) = Run(written, bound - (written - Volatile.Read(ref taken)));
        var part = bytes[..(int)Math.Min(room, bytes.Length)];
        if (part.Length > 0)
        {
            await RandomAccess.WriteAsync(file, part, at, stop);
            Volatile.Write(ref written, written + part.Length);
            Signal(filled);
        }

        return part.Length;
    }

    /// <summary>Waits until bytes were taken, so that there is room again.</summary>
    /// <returns>False when none were for so long.</returns>
    public Task<bool> Freed(TimeSpan patience, CancellationToken stop) =>
        freed.WaitAsync(patience, stop);

    /// <summary>Says that nothing more comes.</summary>
    public void End()
    {
        ended = true;
        Signal(filled);
    }

    /// <summary>Takes bytes; waits for some.</summary>
    /// <returns>How many; 0 when nothing more comes.</returns>
    public async ValueTask<int> Read(Memory<byte> into, CancellationToken stop)
    {
        while (true)
        {
            var isLast = ended;
            var (at, there) = Run(taken, Volatile.Read(ref written) - taken);
            if (there > 0)
            {
                var part = into[..(int)Math.Min(there, into.Length)];
                var count = await RandomAccess.ReadAsync(file, part, at, stop);
                Volatile.Write(ref taken, taken + count);
                Signal(freed);
                return count;
            }

            if (isLast)
            {
                return 0;
            }

            await filled.WaitAsync(stop);
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        file.Dispose();
        filled.Dispose();
        freed.Dispose();
    }

    // Where in the file a position lies, and how much of a length follows there before the file begins anew.
    private (long At, long Length) Run(long position, long length) =>
        (position % bound, Math.Min(length, bound - (position % bound)));

    private static SafeFileHandle Nameless()
    {
        var path = Path.Combine(Path.GetTempPath(), $"powercheck-{Guid.NewGuid():N}.aside");
        var nameless = File.OpenHandle(
            path,
            FileMode.CreateNew,
            FileAccess.ReadWrite,
            FileShare.Delete,
            FileOptions.Asynchronous
        );
        File.Delete(path);
        return nameless;
    }

    // Who was signalled already looks again after taking the signal, and must then see what was written before.
    private static void Signal(SemaphoreSlim waiting)
    {
        Interlocked.MemoryBarrier();
        if (waiting.CurrentCount == 0)
        {
            waiting.Release();
        }
    }
}
