using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace PowerCheck.Api.Tests.Host;

/// <summary>A caller who writes and reads HTTP/1.1 by hand, so as to do both at once or neither.</summary>
internal sealed class Caller : IDisposable
{
    private readonly TcpClient connection = new();
    private readonly Uri address;
    private readonly MemoryStream line = new();
    private BufferedStream answer = new(Stream.Null);
    private int left = -1;

    public Caller(Uri address)
    {
        this.address = address;
        connection.ReceiveBufferSize = 16 * 1024;
    }

    public async Task Begin(string query, string type)
    {
        await connection.ConnectAsync(address.Host, address.Port);
        answer = new(connection.GetStream());
        await Write(
            $"POST /v1/checks/batch{query} HTTP/1.1\r\nHost: {address.Authority}\r\n"
                + $"Content-Type: {type}\r\nTransfer-Encoding: chunked\r\n\r\n"
        );
    }

    /// <summary>Sends a chunk of the request.</summary>
    public Task Send(string text) => Write($"{Encoding.UTF8.GetByteCount(text):x}\r\n{text}\r\n");

    /// <summary>Ends the request.</summary>
    public Task End() => Write("0\r\n\r\n");

    /// <summary>The next line of the answer; null at its end.</summary>
    public Task<string?> Next() => Task.Run(ReadLine);

    public void Dispose()
    {
        connection.Dispose();
        line.Dispose();
    }

    private string? ReadLine()
    {
        line.SetLength(0);
        while (ReadByte() is var one and >= 0)
        {
            if (one == '\n')
            {
                return Encoding.UTF8.GetString(line.ToArray());
            }

            line.WriteByte((byte)one);
        }

        return null;
    }

    // A byte of the body; below 0 at its end.
    private int ReadByte()
    {
        if (left < 0)
        {
            while (HeaderLine().Length > 0) { }

            left = Size();
        }
        else if (left == 0)
        {
            HeaderLine();
            left = Size();
        }

        return left-- == 0 ? -1 : answer.ReadByte();
    }

    private int Size() => int.Parse(HeaderLine(), NumberStyles.HexNumber);

    private string HeaderLine()
    {
        var text = new StringBuilder();
        for (var one = answer.ReadByte(); one is >= 0 and not '\n'; one = answer.ReadByte())
        {
            text.Append((char)one);
        }

        return text.ToString().TrimEnd('\r');
    }

    private Task Write(string text) =>
        connection.GetStream().WriteAsync(Encoding.UTF8.GetBytes(text)).AsTask();
}
