using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace LiveHeat.Ledger.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class FirstRegistry : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "join_codes",
                columns: table => new
                {
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    code_hash = table.Column<string>(type: "TEXT", nullable: false),
                    role = table.Column<string>(type: "TEXT", nullable: false),
                    lane = table.Column<int>(type: "INTEGER", nullable: true),
                    created_at_ms = table.Column<long>(type: "INTEGER", nullable: false),
                    expires_at_ms = table.Column<long>(type: "INTEGER", nullable: false),
                    replaced_at_ms = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_join_codes", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "passphrase",
                columns: table => new
                {
                    id = table.Column<int>(type: "INTEGER", nullable: false),
                    salt = table.Column<byte[]>(type: "BLOB", nullable: false),
                    iterations = table.Column<int>(type: "INTEGER", nullable: false),
                    hash = table.Column<byte[]>(type: "BLOB", nullable: false),
                    set_at_ms = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_passphrase", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "secrets",
                columns: table => new
                {
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    value = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_secrets", x => x.name);
                });

            migrationBuilder.CreateTable(
                name: "settings",
                columns: table => new
                {
                    key = table.Column<string>(type: "TEXT", nullable: false),
                    value = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_settings", x => x.key);
                });

            migrationBuilder.CreateTable(
                name: "setup",
                columns: table => new
                {
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    json = table.Column<string>(type: "TEXT", nullable: true),
                    version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_setup", x => new { x.kind, x.id });
                });

            migrationBuilder.CreateTable(
                name: "sign_ins",
                columns: table => new
                {
                    id = table.Column<string>(type: "TEXT", nullable: false),
                    token_hash = table.Column<string>(type: "TEXT", nullable: false),
                    device = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    role = table.Column<string>(type: "TEXT", nullable: false),
                    lane = table.Column<int>(type: "INTEGER", nullable: true),
                    created_at_ms = table.Column<long>(type: "INTEGER", nullable: false),
                    last_seen_at_ms = table.Column<long>(type: "INTEGER", nullable: false),
                    revoked_at_ms = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_sign_ins", x => x.id);
                });

            migrationBuilder.CreateIndex(
                name: "IX_join_codes_code_hash",
                table: "join_codes",
                column: "code_hash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_sign_ins_token_hash",
                table: "sign_ins",
                column: "token_hash",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "join_codes");

            migrationBuilder.DropTable(
                name: "passphrase");

            migrationBuilder.DropTable(
                name: "secrets");

            migrationBuilder.DropTable(
                name: "settings");

            migrationBuilder.DropTable(
                name: "setup");

            migrationBuilder.DropTable(
                name: "sign_ins");
        }
    }
}
