using System.Globalization;
using System.Reflection;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Http.Timeouts;
using Microsoft.AspNetCore.RateLimiting;
using PowerCheck.Api.Door;
using PowerCheck.Api.Problems;

namespace PowerCheck.Api.Limits;

/// <summary>Holds requests against the limits before their endpoint runs.</summary>
internal static class LimitsSetup
{
    /// <summary>The limits of checks.</summary>
    public const string Checks = "checks";

    /// <summary>The limits of choosing a part.</summary>
    public const string Shortlists = "shortlists";

    /// <summary>The limits of many checks at once.</summary>
    public const string Batches = "batches";

    private const int RetryAfterSeconds = 5;

    /// <summary>Reads the limits and makes what keeps them.</summary>
    public static void AddLimits(this WebApplicationBuilder builder)
    {
        var limits = Read(builder.Configuration.GetSection("Limits"));
        builder.Services.AddSingleton(limits);
        KeepThreads(limits);
        builder.Services.AddRequestTimeouts(timeouts =>
        {
            timeouts.AddPolicy(Checks, TimeOut(limits.Check.Seconds));
            timeouts.AddPolicy(Shortlists, TimeOut(limits.Shortlist.Seconds));
        });
        builder.Services.AddRateLimiter(numbers =>
        {
            numbers.OnRejected = (rejected, _) =>
                new(ProblemOf.Busy(RetryAfterSeconds).ExecuteAsync(rejected.HttpContext));
            Add(numbers, Checks, limits.Check.AtOnce, limits.Check.Waiting);
            Add(numbers, Shortlists, limits.Shortlist.AtOnce, limits.Shortlist.Waiting);
            Add(numbers, Batches, limits.Batch.AtOnce, 0);
        });
    }

    /// <summary>Puts what keeps the limits into the pipeline.</summary>
    public static void UseLimits(this IApplicationBuilder app)
    {
        app.UseRateLimiter();
        app.UseRequestTimeouts();
    }

    /// <summary>Holds an endpoint to the limits of a name.</summary>
    public static RouteHandlerBuilder Limited(this RouteHandlerBuilder endpoint, string name)
    {
        endpoint.RequireRateLimiting(name);
        // Many at once keep their time themselves, and end with a tally.
        if (name is not Batches)
        {
            endpoint.WithRequestTimeout(name);
        }

        return endpoint;
    }

    // Checks hold their threads for seconds; whoever reads, writes or keeps time must get one all the same, at once.
    private static void KeepThreads(ServiceLimits limits)
    {
        ThreadPool.GetMinThreads(out var workers, out var ports);
        var busy = Environment.ProcessorCount * (limits.Batch.AtOnce + 2) + limits.Check.AtOnce;
        ThreadPool.SetMinThreads(Math.Max(workers, busy), ports);
    }

    private static ServiceLimits Read(IConfigurationSection section)
    {
        var limits = section.Get<ServiceLimits>() ?? new();
        Hold(limits.Check, "Limits:Check");
        Hold(limits.Shortlist, "Limits:Shortlist");
        Hold(limits.Batch, "Limits:Batch");
        return limits;
    }

    private static void Hold(object limits, string section)
    {
        foreach (var property in limits.GetType().GetProperties())
        {
            var range = property.GetCustomAttribute<FigureAttribute>()!;
            var value = Convert.ToDouble(property.GetValue(limits), CultureInfo.InvariantCulture);
            if (!(value >= range.Minimum && value <= range.Maximum))
            {
                throw new InvalidOperationException(
                    $"{section}:{property.Name} in the configuration is {value} and must be {range.Range}."
                );
            }
        }
    }

    private static RequestTimeoutPolicy TimeOut(double seconds) =>
        new()
        {
            Timeout = TimeSpan.FromSeconds(seconds),
            WriteTimeoutResponse = context => ProblemOf.TooLong(seconds).ExecuteAsync(context),
        };

    private static void Add(RateLimiterOptions numbers, string name, int atOnce, int waiting) =>
        numbers.AddConcurrencyLimiter(
            name,
            limiter =>
            {
                limiter.PermitLimit = atOnce;
                limiter.QueueLimit = waiting;
                limiter.QueueProcessingOrder = QueueProcessingOrder.OldestFirst;
            }
        );
}
