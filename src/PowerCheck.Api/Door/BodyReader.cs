using System.Buffers;
using System.IO.Pipelines;

namespace PowerCheck.Api.Door;

/// <summary>Reads a body into borrowed memory, up to a size.</summary>
internal static class BodyReader
{
    /// <summary>Most bytes of a body. The largest check that fits the lists' lengths is far smaller.</summary>
    public const int MostBytes = 256 * 1024;

    /// <summary>The body, to be given back after use; null when it is too large.</summary>
    public static async ValueTask<Body?> Read(HttpRequest request, CancellationToken aborted)
    {
        if (request.ContentLength > MostBytes)
        {
            return null;
        }

        var pipe = request.BodyReader;
        while (true)
        {
            var read = await pipe.ReadAsync(aborted);
            if (read.Buffer.Length > MostBytes)
            {
                pipe.AdvanceTo(read.Buffer.End);
                return null;
            }

            if (read.IsCompleted)
            {
                return Take(pipe, read.Buffer);
            }

            pipe.AdvanceTo(read.Buffer.Start, read.Buffer.End);
        }
    }

    private static Body Take(PipeReader pipe, ReadOnlySequence<byte> buffer)
    {
        var body = new Body((int)buffer.Length);
        buffer.CopyTo(body.Bytes);
        pipe.AdvanceTo(buffer.End);
        return body;
    }
}

/// <summary>A body in borrowed memory.</summary>
internal sealed class Body(int length) : IDisposable
{
    private readonly byte[] rented = ArrayPool<byte>.Shared.Rent(length);

    /// <summary>The bytes as they were sent.</summary>
    public Span<byte> Bytes => rented.AsSpan(0, length);

    /// <inheritdoc/>
    public void Dispose() => ArrayPool<byte>.Shared.Return(rented);
}
