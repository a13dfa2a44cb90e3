using LiveHeat.Contracts.Access;
using LiveHeat.Engine.Heats;
using LiveHeat.Screens.Connection;
using LiveHeat.Screens.Heats;
using LiveHeat.Screens.Look;
using LiveHeat.Screens.Words;
using Microsoft.AspNetCore.Components;

namespace LiveHeat.Screens.Codes;

/// <summary>Makes join codes, shows them big with their QR code, and prints a sheet for each lane. They are told once and kept on this page only.</summary>
public sealed partial class CodesPage(HeatApi api, ProgramStore program, PageScript page) : ComponentBase
{
    private static readonly int[] Hours = [4, 12, 24, 48];
    private readonly List<CodeMade> made = [];
    private CodeMade? big;
    private string lanes = "1-8";
    private int hours = 12;
    private string? wrong;
    private string? problem;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    /// <summary>The desk was opened under an address that no phone can reach.</summary>
    private bool OnlyHere => new Uri(Navigation.BaseUri).IsLoopback;

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        var most = (program.List?.Heats ?? []).SelectMany(heat => heat.Lanes).Select(lane => lane.Lane.Value).DefaultIfEmpty(0).Max();
        lanes = most > 0 ? $"1-{most}" : lanes;
    }

    private async Task MakeLanes()
    {
        var read = LaneList.Read(lanes);
        wrong = read is null ? CodeWords.LanesWrong : null;
        foreach (var lane in read ?? [])
        {
            if (!await Make(Role.Judge, lane))
            {
                return;
            }
        }
    }

    private async Task<bool> Make(Role role, LaneNumber? lane)
    {
        var reply = await api.MakeCode(new CodeRequest(role, lane, hours * 60));
        problem = reply.Problem is { } refused ? ProblemWords.WithCode(refused.Detail, refused.Code) : null;
        if (reply.Value is { } code)
        {
            var at = made.FindIndex(one => one.Role == role && one.Lane == lane);
            if (at >= 0)
            {
                made[at] = code;
            }
            else
            {
                made.Add(code);
            }

            StateHasChanged();
        }

        return reply.Value is not null;
    }
}
